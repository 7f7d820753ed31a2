using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>A row of the table of synonyms.</summary>
internal sealed record SynonymRow
{
    public string Id { get; init; } = "";

    public string ScientificName { get; init; } = "";

    public string? Authorship { get; init; }

    public string? VernacularName { get; init; }

    public string AcceptedId { get; init; } = "";

    public Synonym ToSynonym() => new(Id, ScientificName, AcceptedId) { Authorship = Authorship, VernacularName = VernacularName };
}
