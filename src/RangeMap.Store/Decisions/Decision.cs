using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>A record as a person saw it.</summary>
/// <param name="Id">The record.</param>
/// <param name="Version">The version that was seen; a record that says something else by now is not decided upon. Null to decide whatever it says.</param>
public readonly record struct RecordMark(RecordId Id, long? Version);

/// <summary>A person's decision on one record or many.</summary>
/// <param name="Records">The records.</param>
/// <param name="By">Who decides.</param>
/// <param name="Reason">Why, for the recorder to read.</param>
public sealed record Decision(IReadOnlyList<RecordMark> Records, string By, string Reason)
{
    /// <summary>Where the review stands now; null keeps it.</summary>
    public ReviewStatus? Status { get; init; }

    /// <summary>taxonID that the records are identified as afresh; null keeps it. The name that was sent stays with the record.</summary>
    public string? TaxonId { get; init; }
}

/// <summary>What a decision did.</summary>
/// <param name="Number">Number of the set of decisions, by which it can be taken back; null when nothing was decided.</param>
/// <param name="Changed">Records decided upon.</param>
/// <param name="Missing">Records that are not there.</param>
/// <param name="ChangedMeanwhile">Records that say something else than the person saw; they were left alone.</param>
/// <param name="DecidedLater">Of a reversal: records on which somebody decided later; they were left alone.</param>
public sealed record DecisionAnswer(
    long? Number, int Changed, IReadOnlyList<RecordId> Missing, IReadOnlyList<RecordId> ChangedMeanwhile, IReadOnlyList<RecordId> DecidedLater);

/// <summary>One step of a record's history.</summary>
public sealed record PastDecision
{
    /// <summary>The set that it belongs to.</summary>
    public long DecisionSet { get; init; }

    /// <summary>When, ISO 8601 in UTC.</summary>
    public string MadeAt { get; init; } = "";

    /// <summary>Who.</summary>
    public string MadeBy { get; init; } = "";

    /// <summary>Why.</summary>
    public string Reason { get; init; } = "";

    /// <summary>The set that this one took back; null for a decision of its own.</summary>
    public long? Reverses { get; init; }

    /// <summary>What the decision was about; compare with <see cref="StoredRecord.Basis"/>.</summary>
    public long Basis { get; init; }

    /// <summary>The status that stood from then on; null for the one that was sent.</summary>
    public long? Status { get; init; }

    /// <summary>taxonID that stood from then on; null for the one that was sent.</summary>
    public string? TaxonId { get; init; }

    /// <summary>Its name.</summary>
    public string? TaxonName { get; init; }
}

/// <summary>Decisions made together.</summary>
public sealed record DecisionSet
{
    /// <summary>Its number.</summary>
    public long Number { get; init; }

    /// <summary>When, ISO 8601 in UTC.</summary>
    public string MadeAt { get; init; } = "";

    /// <summary>Who.</summary>
    public string MadeBy { get; init; } = "";

    /// <summary>Why.</summary>
    public string Reason { get; init; } = "";

    /// <summary>The set that this one took back.</summary>
    public long? Reverses { get; init; }

    /// <summary>The set that took this one back.</summary>
    public long? ReversedBy { get; init; }

    /// <summary>Records decided upon.</summary>
    public long Records { get; init; }
}
