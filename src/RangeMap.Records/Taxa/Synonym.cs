namespace RangeMap.Records;

/// <summary>A name in use for a taxon beside its accepted one.</summary>
/// <param name="Id">The taxonID of the name.</param>
/// <param name="ScientificName">Name without authorship.</param>
/// <param name="AcceptedId">taxonID of the accepted taxon.</param>
public sealed record Synonym(string Id, string ScientificName, string AcceptedId)
{
    /// <summary>Authorship of the name.</summary>
    public string? Authorship { get; init; }

    /// <summary>Everyday name, if this one has its own.</summary>
    public string? VernacularName { get; init; }
}
