using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>Which records are asked for; what is null does not matter.</summary>
public sealed record RecordQuery
{
    /// <summary>The data set's identifier.</summary>
    public string? Dataset { get; init; }

    /// <summary>The import that stated the record last.</summary>
    public long? Batch { get; init; }

    /// <summary>Numbers of the taxa.</summary>
    public IReadOnlyList<int>? Taxa { get; init; }

    /// <summary>Numbers of taxa whose records are left out.</summary>
    public IReadOnlyList<int>? WithoutTaxa { get; init; }

    /// <summary>Where the review stands.</summary>
    public ReviewStatus? Status { get; init; }

    /// <summary>A stand of the review whose records are left out.</summary>
    public ReviewStatus? WithoutStatus { get; init; }

    /// <summary>Doubts, of which the record has one at least.</summary>
    public Doubts? Doubts { get; init; }

    /// <summary>The recorder's name as written.</summary>
    public string? Recorder { get; init; }

    /// <summary>Records that may be of this day or later.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Records that may be of this day or earlier.</summary>
    public DateOnly? To { get; init; }

    /// <summary>The square that wholly contains the record's own.</summary>
    public Square? Within { get; init; }

    /// <summary>Most records given at once.</summary>
    public int Limit { get; init; } = 100;

    /// <summary>Where the page before ended; null for the first page.</summary>
    public string? After { get; init; }
}

/// <summary>A page of records.</summary>
/// <param name="Records">The records.</param>
/// <param name="Next">What to ask for with <see cref="RecordQuery.After"/> to read on; null at the end.</param>
public sealed record RecordPage(IReadOnlyList<StoredRecord> Records, string? Next);
