namespace RangeMap.Records;

/// <summary>Words in which files state where the review of a record stands.</summary>
internal static class ReviewWords
{
    private static readonly Dictionary<string, ReviewStatus>.AlternateLookup<ReadOnlySpan<char>> Known = Make();

    /// <summary>The status; a word that is not known, or none, leaves the record unreviewed.</summary>
    public static ReviewStatus Read(ReadOnlySpan<char> text) => Known.TryGetValue(text, out var status) ? status : ReviewStatus.Unreviewed;

    private static Dictionary<string, ReviewStatus>.AlternateLookup<ReadOnlySpan<char>> Make()
    {
        (ReviewStatus Status, string[] Words)[] words =
        [
            (ReviewStatus.Confirmed, ["accepted", "confirmed", "verified", "correct", "valid", "approved"]),
            (ReviewStatus.Doubtful, ["doubtful", "uncertain", "questionable", "queried", "query", "dubious"]),
            (ReviewStatus.Rejected, ["rejected", "incorrect", "wrong", "invalid", "not accepted"]),
            (ReviewStatus.Unreviewed, ["unreviewed", "unconfirmed", "unverified", "not reviewed", "pending", "plausible"]),
        ];
        return words.SelectMany(w => w.Words.Select(word => (word, w.Status)))
            .ToDictionary(w => w.word, w => w.Status, StringComparer.OrdinalIgnoreCase)
            .GetAlternateLookup<ReadOnlySpan<char>>();
    }
}
