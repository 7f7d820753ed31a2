namespace RangeMap.Store;

/// <summary>What a change of taxa may alter of one; kept as JSON beside the change, so that it can be taken back.</summary>
internal sealed record TaxonState
{
    public long Number { get; init; }

    public string Id { get; init; } = "";

    public string ScientificName { get; init; } = "";

    public string? Authorship { get; init; }

    public string? Rank { get; init; }

    public string? AggregateId { get; init; }

    public long? ReplacedBy { get; init; }
}
