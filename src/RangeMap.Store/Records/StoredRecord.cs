using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>A record as it is kept, with the names of what it points to.</summary>
public sealed record StoredRecord
{
    /// <summary>Its name for good.</summary>
    public RecordId Id => RecordId.Of(DatasetNumber, KeyHigh, KeyLow);

    /// <summary>Changes whenever the file says something else of the record, or somebody decides on it.</summary>
    public long Version => RecordVersion.Of(Content, Taxon, Status);

    /// <summary>The data set's identifier.</summary>
    public string Dataset { get; init; } = "";

    /// <summary>The import that stated it last.</summary>
    public long Batch { get; init; }

    /// <summary>The row in that import's file.</summary>
    public long Row { get; init; }

    /// <summary>Number of the taxon that it counts for.</summary>
    public long Taxon { get; init; }

    /// <summary>Number of the taxon that the file named, where a decision says otherwise.</summary>
    public long? SentTaxon { get; init; }

    /// <summary>Where the review stood in the file, where a decision says otherwise.</summary>
    public long? SentStatus { get; init; }

    /// <summary>Where the review stands.</summary>
    public ReviewStatus ReviewStatus => (ReviewStatus)Status;

    /// <summary>Reasons to look at it again.</summary>
    public Doubts Doubts => (Doubts)DoubtBits;

    /// <summary>The finest square that it supports.</summary>
    public Square Square => Square.FromCode(SquareCode);

    /// <summary>The possible days.</summary>
    public DayRange Dates => new(DateOnly.FromDayNumber((int)FirstDay), DateOnly.FromDayNumber((int)LastDay));

    /// <summary>False for a statement that the taxon was not found.</summary>
    public bool Present => PresentBit != 0;

    /// <summary>True when it stands on a list of all taxa of the group that were found on the visit.</summary>
    public bool OnCompleteList => CompleteBit != 0;

    /// <summary>What a decision on this version of it is about; see <see cref="PastDecision.Basis"/>.</summary>
    public long Basis => DecisionBasis.Of(SentTaxon ?? Taxon, SquareCode, FirstDay, LastDay, Present);

    /// <summary>Who saw it.</summary>
    public string? Recorder { get; init; }

    /// <summary>Who named it.</summary>
    public string? Determiner { get; init; }

    /// <summary>Life stage or caste.</summary>
    public string? Stage { get; init; }

    /// <summary>Sex.</summary>
    public string? Sex { get; init; }

    /// <summary>Number of individuals.</summary>
    public long? Individuals { get; init; }

    /// <summary>Name of the site.</summary>
    public string? Site { get; init; }

    /// <summary>Degrees north, where coordinates were sent.</summary>
    public double? Latitude { get; init; }

    /// <summary>Degrees east, where coordinates were sent.</summary>
    public double? Longitude { get; init; }

    /// <summary>Radius in metres that the coordinates are good for.</summary>
    public double? Uncertainty { get; init; }

    /// <summary>Length in millimetres.</summary>
    public double? LengthMm { get; init; }

    /// <summary>What the identification rests on.</summary>
    public string? Evidence { get; init; }

    /// <summary>Plant visited, or host.</summary>
    public string? Host { get; init; }

    /// <summary>What it did.</summary>
    public string? Behaviour { get; init; }

    internal long RowId { get; init; }

    internal long DatasetNumber { get; init; }

    internal long KeyHigh { get; init; }

    internal long KeyLow { get; init; }

    internal long Content { get; init; }

    internal long SquareCode { get; init; }

    internal long FirstDay { get; init; }

    internal long LastDay { get; init; }

    internal long PresentBit { get; init; }

    internal long CompleteBit { get; init; }

    internal long Status { get; init; }

    internal long DoubtBits { get; init; }
}
