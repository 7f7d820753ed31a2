namespace RangeMap.Records;

/// <summary>Body lengths among the measurements of an archive (http://rs.tdwg.org/dwc/terms/MeasurementOrFact).</summary>
internal sealed class LengthTable : ExtensionTable
{
    /// <summary>Characters of the longest text that can be a length with its unit.</summary>
    private const int LongestText = 100;

    /// <inheritdoc/>
    public override IReadOnlyList<Term> Terms { get; } = [Term.LengthMm];

    /// <inheritdoc/>
    public override ExtensionCells? Read(ExtensionRow row)
    {
        var type = row["measurementType"];
        if (type.IsEmpty || !IsLength(type.ToString()))
            return null;
        var unit = row["measurementUnit"];
        var text = unit.IsEmpty ? row["measurementValue"].ToString() : $"{row["measurementValue"]} {unit}";
        // A bare number in a column of lengths is in millimetres by agreement; among measurements of every kind nobody agreed on that.
        if (unit.IsEmpty && !LengthText.NamesUnit(text))
        {
            if (!LengthText.NamesUnit(type.TrimEnd(')')))
                return null;
            text += " mm";
        }

        return text.Length <= LongestText && LengthText.NamesUnit(text) && LengthText.Read(text) is not null ? new(Length: text) : null;
    }

    /// <summary>True for the names by which a column of body lengths is known too.</summary>
    private static bool IsLength(string type) => (TermNames.FindOfficial(type) ?? TermNames.FindPlain(type)) == Term.LengthMm;
}
