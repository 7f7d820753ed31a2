namespace RangeMap.Records;

/// <summary>The cells of the row that a reader stands on, by what they mean.</summary>
internal sealed class RowCells(RowSource rows, ColumnMapping mapping)
{
    private readonly bool _guarded = mapping.Columns.Contains(RefusalColumns.Reason, StringComparer.OrdinalIgnoreCase);
    private readonly string[] _defaults = [.. Enum.GetValues<Term>().Select(t => mapping.Defaults.GetValueOrDefault(t, ""))];

    /// <summary>All defaults in one text, for telling whether they changed.</summary>
    public string Defaults { get; } = string.Join('\u001F', mapping.Defaults.OrderBy(d => d.Key).Select(d => $"{TermNames.Name(d.Key)}={d.Value}"));

    /// <summary>Trimmed text of a term: its cell, else its default, else empty.</summary>
    public ReadOnlySpan<char> this[Term term]
    {
        get
        {
            var column = mapping.ColumnOf(term);
            var text = column < 0 ? default : Cell(column);
            return text.IsEmpty ? _defaults[(int)term] : text;
        }
    }

    /// <summary>Trimmed text of a column; empty for the ways in which databases write "nothing": \N, NULL and NA.</summary>
    public ReadOnlySpan<char> Cell(int column)
    {
        var text = rows[column];
        if (text.IsEmpty)
            return text;
        // Hardly a cell begins or ends with white space, and each is looked at several times.
        if (text[0] <= ' ' || text[^1] <= ' ' || text[0] > '~' || text[^1] > '~')
            text = text.Trim();
        if (_guarded)
            text = FormulaGuard.Unguard(text);
        return MeansNothing(text) ? default : text;
    }

    /// <summary>True for the ways in which databases write "nothing".</summary>
    public static bool MeansNothing(ReadOnlySpan<char> text) =>
        text.Length is >= 2 and <= 4 && (text is "\\N" or "NA" || text.Equals("NULL", StringComparison.OrdinalIgnoreCase));
}
