namespace RangeMap.Records;

/// <summary>An extension of an archive: its rows are counted, some of them fill a record, and all are kept with the archive.</summary>
/// <param name="Name">The file.</param>
/// <param name="RowType">What its rows are, such as Multimedia or MeasurementOrFact.</param>
/// <param name="Rows">Number of rows.</param>
/// <param name="Orphans">Rows that belong to no row of the core.</param>
public sealed record KeptFile(string Name, string RowType, long Rows, long Orphans)
{
    /// <summary>Rows that filled what an occurrence did not say itself.</summary>
    public long Used { get; init; }

    /// <summary>Rows that were left because more of them would have had to be held in memory than the limit allows.</summary>
    public long BeyondLimit { get; init; }

    /// <summary>Rows that filled nothing.</summary>
    public long Left => Rows - Used;
}
