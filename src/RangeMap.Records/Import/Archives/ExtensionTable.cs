namespace RangeMap.Records;

/// <summary>What a row of an extension tells about the occurrence that it belongs to. Null where it tells nothing.</summary>
/// <param name="Length">Body length with its unit.</param>
/// <param name="Evidence">What the record rests on, as a controlled word.</param>
/// <param name="Link">Where the evidence can be seen.</param>
/// <param name="Complete">Whether the list that it stands on has all that was found.</param>
internal readonly record struct ExtensionCells(string? Length = null, string? Evidence = null, string? Link = null, string? Complete = null)
{
    /// <summary>Characters of all texts.</summary>
    public int Characters => (Length?.Length ?? 0) + (Evidence?.Length ?? 0) + (Link?.Length ?? 0) + (Complete?.Length ?? 0);
}

/// <summary>Reads one extension of an archive for what its rows tell about occurrences.</summary>
internal abstract class ExtensionTable
{
    /// <summary>The terms that its rows can fill.</summary>
    public abstract IReadOnlyList<Term> Terms { get; }

    /// <summary>True where a row tells of all occurrences of the core row that it belongs to, such as an event.</summary>
    public virtual bool TellsOfCore => false;

    /// <summary>The reader of a table; null where its rows tell nothing that a record has room for.</summary>
    public static ExtensionTable? Of(ArchiveTable table) => table.Kind switch
    {
        "MeasurementOrFact" or "ExtendedMeasurementOrFact" when Has(table, "measurementType") && Has(table, "measurementValue") => new LengthTable(),
        "Multimedia" or "Image" or "SimpleMultimedia" when MediaTable.LinkNames.Any(name => Has(table, name)) => new MediaTable(table.Kind == "Image"),
        "Event" when Has(table, CompletenessTable.Column) => new CompletenessTable(),
        _ => null,
    };

    /// <summary>What the row at hand tells; null for nothing.</summary>
    public abstract ExtensionCells? Read(ExtensionRow row);

    private static bool Has(ArchiveTable table, string name) => table.Fields.Any(f => f.ShortName.Equals(name, StringComparison.OrdinalIgnoreCase));
}
