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

/// <summary>Reasons to look at a record again, as found by the checks. The bits are stored and never change.</summary>
[Flags]
public enum Doubts
{
    /// <summary>No reason.</summary>
    None = 0,

    /// <summary>Grid reference and coordinates disagree by more than their precisions. Serious.</summary>
    PlacesDisagree = 1 << 0,

    /// <summary>Latitude and longitude look exchanged and were read in the other order. Serious.</summary>
    CoordinatesSwapped = 1 << 1,

    /// <summary>The uncertainty was not stated and is taken from the decimals given.</summary>
    UncertaintyAssumed = 1 << 2,

    /// <summary>The name carries a qualifier such as cf. or a question mark. Serious.</summary>
    NameUncertain = 1 << 3,

    /// <summary>Dated before the taxon's first known year. Serious.</summary>
    BeforeFirstYear = 1 << 4,

    /// <summary>The count is zero although the row does not say that the taxon was absent.</summary>
    CountZero = 1 << 5,

    /// <summary>The same row stands in the file more than once.</summary>
    RepeatedRow = 1 << 6,

    /// <summary>The place lies in the sea, further out than its precision.</summary>
    AtSea = 1 << 7,

    /// <summary>Dated outside the weeks in which this stage is known. Serious.</summary>
    OutOfSeason = 1 << 8,

    /// <summary>The position in the file's own datum was not stated or not known and was taken as WGS84.</summary>
    DatumAssumed = 1 << 9,

    /// <summary>The date and the year, month and day given beside it have no day in common; the date counts. Serious.</summary>
    DatesDisagree = 1 << 10,

    /// <summary>The taxon, place or date changed after somebody had decided on the record. Serious.</summary>
    ChangedSinceReview = 1 << 24,
}

/// <summary>Which doubts weigh enough to keep an unreviewed record off the default map.</summary>
public static class SeriousDoubts
{
    /// <summary>The doubts that make an unreviewed record unusable until a person has looked.</summary>
    public const Doubts Mask = Doubts.PlacesDisagree | Doubts.CoordinatesSwapped | Doubts.NameUncertain | Doubts.BeforeFirstYear | Doubts.OutOfSeason | Doubts.DatesDisagree | Doubts.ChangedSinceReview;
}
