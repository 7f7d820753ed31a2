namespace RangeMap.Records;

/// <summary>What an archive says of its origin: how to cite it and what one may do with it. Null where it says nothing.</summary>
public sealed record ArchiveCitation
{
    /// <summary>Title of the data set.</summary>
    public string? Title { get; init; }

    /// <summary>Who made it: people, else organisations.</summary>
    public IReadOnlyList<string> Creators { get; init; } = [];

    /// <summary>Licence or statement of rights, as written.</summary>
    public string? Licence { get; init; }

    /// <summary>Address of the licence.</summary>
    public string? LicenceUrl { get; init; }

    /// <summary>How the data set wants to be cited.</summary>
    public string? Citation { get; init; }

    /// <summary>When it was published, as written.</summary>
    public string? Published { get; init; }

    /// <summary>Identifier of the description, often a DOI or a UUID.</summary>
    public string? Identifier { get; init; }
}
