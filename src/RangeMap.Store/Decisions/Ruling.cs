using System.IO.Hashing;
using System.Runtime.InteropServices;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>What the decisions on a record come to. Null leaves what the file said.</summary>
/// <param name="Status">Where the review stands.</param>
/// <param name="Taxon">Number of the taxon that the record was identified as afresh.</param>
internal readonly record struct Ruling(long? Status, long? Taxon)
{
    /// <summary>Nothing is decided: the record stands as it was sent.</summary>
    public static Ruling AsSent => default;
}

/// <summary>What a decision is about: the taxon, place and days that the file gave. It holds for as long as the file says the same.</summary>
internal static class DecisionBasis
{
    /// <summary>A hash of what was decided upon; 64 bits, for it only tells versions of one record apart.</summary>
    public static long Of(long sentTaxon, long square, long firstDay, long lastDay, bool present) =>
        (long)XxHash3.HashToUInt64(MemoryMarshal.AsBytes((ReadOnlySpan<long>)[sentTaxon, square, firstDay, lastDay, present ? 1 : 0]));

    /// <summary>The basis of a stored version of a record.</summary>
    public static long Of(RecordRow row) => Of(row.SentTaxon ?? row.Taxon, row.Square, row.FirstDay, row.LastDay, row.Present != 0);
}

/// <summary>How a record counts: as it was sent, or as decided, with what was sent kept beside it.</summary>
/// <param name="Taxon">Number of the taxon.</param>
/// <param name="Status">Where its review stands.</param>
/// <param name="Doubts">Its doubts; a record that was decided upon and then changed has one more.</param>
/// <param name="SentTaxon">The file's taxon, where a decision says otherwise.</param>
/// <param name="SentStatus">The file's status, where a decision says otherwise.</param>
internal readonly record struct Standing(long Taxon, long Status, long Doubts, long? SentTaxon, long? SentStatus)
{
    /// <summary>A record as it was sent.</summary>
    public static Standing AsSent(long taxon, ReviewStatus status, Doubts doubts) => new(taxon, (long)status, (long)doubts, null, null);

    /// <summary>A stored record as it was sent.</summary>
    public static Standing AsSent(RecordRow row) =>
        new(row.SentTaxon ?? row.Taxon, row.SentStatus ?? row.Status, row.Doubts & ~(long)Records.Doubts.ChangedSinceReview, null, null);

    /// <summary>The same record under a ruling.</summary>
    public Standing Under(Ruling ruling) => this with
    {
        Taxon = ruling.Taxon ?? Taxon,
        Status = ruling.Status ?? Status,
        SentTaxon = ruling.Taxon is { } taxon && taxon != Taxon ? Taxon : null,
        SentStatus = ruling.Status is { } status && status != Status ? Status : null,
    };

    /// <summary>The same record where the decisions on it were about something else than it says now.</summary>
    public Standing ChangedSinceReview() => this with { Doubts = Doubts | (long)Records.Doubts.ChangedSinceReview };
}
