namespace RangeMap.Records;

/// <summary>What came of reading a taxon list file.</summary>
/// <param name="List">The taxa and synonyms that were understood.</param>
/// <param name="Refusals">The rows that were not, each with its reason.</param>
/// <param name="UnknownColumns">Columns of unknown meaning; what they hold is kept in <see cref="Taxon.Notes"/>.</param>
/// <param name="Columns">The headers of the file, for writing refusals.</param>
/// <param name="Separator">The separator of the file, for writing refusals.</param>
public sealed record TaxonListReading(TaxonList List, IReadOnlyList<Refusal> Refusals, IReadOnlyList<string> UnknownColumns, IReadOnlyList<string> Columns, char Separator);
