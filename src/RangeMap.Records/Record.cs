using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>
/// One observation that was understood: a taxon, in a square, on some day of a range. Records are made by the
/// reader of a file, are complete when made and never change; the row they came from is kept whole beside them.
/// </summary>
public sealed record Record
{
    /// <summary>The row in its file, counted from 1 for the first row after the header.</summary>
    public required long Row { get; init; }

    /// <summary>Identity within the data set: from occurrenceID where there is one, else from the row's own content.</summary>
    public required UInt128 Key { get; init; }

    /// <summary>Hash of everything the row said; a row whose key is known and whose content is unchanged changes nothing.</summary>
    public required UInt128 Content { get; init; }

    /// <summary>The taxon as it was resolved against the taxon list.</summary>
    public required Taxon Taxon { get; init; }

    /// <summary>The finest square that the record supports.</summary>
    public required Square Square { get; init; }

    /// <summary>The possible days.</summary>
    public required DayRange Dates { get; init; }

    /// <summary>False when the row states that the taxon was looked for and not found.</summary>
    public bool Present { get; init; } = true;

    /// <summary>True when the row stands on a list of all taxa of the group that the recorder found on the visit.</summary>
    public bool OnCompleteList { get; init; }

    /// <summary>Where the review of the record stands.</summary>
    public ReviewStatus Status { get; init; }

    /// <summary>Reasons to look at the record again.</summary>
    public Doubts Doubts { get; init; }

    /// <summary>Who saw it, as written; several names stay one text.</summary>
    public string? Recorder { get; init; }

    /// <summary>Who named it, as written.</summary>
    public string? Determiner { get; init; }

    /// <summary>Life stage or caste, as one of the controlled words where recognised, else as written.</summary>
    public string? Stage { get; init; }

    /// <summary>Sex, as one of the controlled words where recognised, else as written.</summary>
    public string? Sex { get; init; }

    /// <summary>Body length in millimetres, the middle of a span; null where none is stated or it cannot be understood.</summary>
    public double? LengthMm { get; init; }

    /// <summary>What the record rests on: specimen, photograph and so on as a controlled word where recognised, else as written.</summary>
    public string? Evidence { get; init; }

    /// <summary>Where the evidence can be seen, as written; only <see cref="Records.EvidenceLink.Shown"/> may become a link.</summary>
    public string? EvidenceLink { get; init; }

    /// <summary>Plant visited, or host, as written.</summary>
    public string? Host { get; init; }

    /// <summary>What it did, as one of the controlled words where recognised, else as written.</summary>
    public string? Behaviour { get; init; }

    /// <summary>Remarks, as written.</summary>
    public string? Remarks { get; init; }

    /// <summary>Number of individuals, where stated.</summary>
    public int? Count { get; init; }

    /// <summary>Name of the site, as written.</summary>
    public string? Site { get; init; }

    /// <summary>The point, where the row gave coordinates.</summary>
    public LatLon? Point { get; init; }

    /// <summary>Radius in metres that the coordinates are good for: stated, or assumed from their decimals.</summary>
    public double? UncertaintyMetres { get; init; }
}

/// <summary>A person's decision on a record. The numbers are stored and never change.</summary>
public enum ReviewStatus : byte
{
    /// <summary>Nobody has decided yet.</summary>
    Unreviewed = 0,

    /// <summary>Accepted by a reviewer.</summary>
    Confirmed = 1,

    /// <summary>A reviewer is not convinced.</summary>
    Doubtful = 2,

    /// <summary>Not accepted; never maps.</summary>
    Rejected = 3,
}
