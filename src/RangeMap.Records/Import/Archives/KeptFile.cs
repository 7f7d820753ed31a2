namespace RangeMap.Records;

/// <summary>A file of an archive whose rows were counted and are not used.</summary>
/// <param name="Name">The file.</param>
/// <param name="RowType">What its rows are, such as Multimedia or MeasurementOrFact.</param>
/// <param name="Rows">Number of rows.</param>
/// <param name="Orphans">Rows that belong to no row of the core.</param>
public sealed record KeptFile(string Name, string RowType, long Rows, long Orphans);
