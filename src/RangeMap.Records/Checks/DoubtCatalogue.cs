using System.Numerics;

namespace RangeMap.Records;

/// <summary>What there is to say about one doubt, whatever the record.</summary>
/// <param name="Doubt">The bit.</param>
/// <param name="Code">Its name in JSON, tables and addresses, such as outOfSeason.</param>
/// <param name="Weight">How much it counts in the order of the review queue; 0 for a note that asks for no review.</param>
/// <param name="Title">A few words for a list or a heading.</param>
public sealed record DoubtEntry(Doubts Doubt, string Code, int Weight, string Title)
{
    /// <summary>True when it keeps an unreviewed record off the default map.</summary>
    public bool Serious => (Doubt & SeriousDoubts.Mask) != 0;
}

/// <summary>
/// Every doubt with its code, weight and title. Serious doubts weigh 6 or more, so that no lone light one outweighs them;
/// the weights are a convention of this program, not a measurement.
/// </summary>
public static class DoubtCatalogue
{
    private static readonly DoubtEntry?[] ByBit = new DoubtEntry?[32];
    private static readonly Dictionary<string, Doubts> ByCode = new(StringComparer.OrdinalIgnoreCase);

    static DoubtCatalogue()
    {
        All =
        [
            Entry(Doubts.BeforeFirstYear, 9, "before the first known year"),
            Entry(Doubts.OutsideKnownArea, 9, "outside the known area"),
            Entry(Doubts.ChangedSinceReview, 8, "changed after it was reviewed"),
            Entry(Doubts.PlacesDisagree, 8, "two places that disagree"),
            Entry(Doubts.StageImpossible, 8, "stage or sex impossible"),
            Entry(Doubts.AheadOfFront, 7, "far ahead of the front"),
            Entry(Doubts.EvidenceMissing, 7, "easily confused, evidence missing"),
            Entry(Doubts.CoordinatesSwapped, 6, "coordinates exchanged"),
            Entry(Doubts.DatesDisagree, 6, "two dates that disagree"),
            Entry(Doubts.LengthOutOfRange, 6, "length out of range"),
            Entry(Doubts.NameUncertain, 6, "name uncertain"),
            Entry(Doubts.OutOfSeason, 6, "out of season"),
            Entry(Doubts.AtSea, 4, "at sea"),
            Entry(Doubts.RecorderImplausible, 4, "too many years for one recorder"),
            Entry(Doubts.TwoFarPlaces, 4, "two far places on one day"),
            Entry(Doubts.CountZero, 2, "count of zero"),
            Entry(Doubts.DateDefault, 2, "date may be filled in"),
            Entry(Doubts.DuplicateRecord, 2, "perhaps a duplicate"),
            Entry(Doubts.PlaceDefault, 2, "place may be filled in"),
            Entry(Doubts.RepeatedRow, 1, "row repeated in its file"),
            Entry(Doubts.StageAgainstDate, 1, "another stage is about then"),
            Entry(Doubts.DatumAssumed, 0, "datum assumed"),
            Entry(Doubts.UncertaintyAssumed, 0, "uncertainty assumed"),
        ];
        foreach (var entry in All)
        {
            ByBit[BitOperations.TrailingZeroCount((uint)entry.Doubt)] = entry;
            ByCode.Add(entry.Code, entry.Doubt);
        }
    }

    /// <summary>Every doubt, the heaviest first.</summary>
    public static IReadOnlyList<DoubtEntry> All { get; }

    /// <summary>The entry of one doubt.</summary>
    /// <exception cref="ArgumentException">Not exactly one known bit.</exception>
    public static DoubtEntry Of(Doubts doubt) =>
        BitOperations.IsPow2((uint)doubt) && ByBit[BitOperations.TrailingZeroCount((uint)doubt)] is { } entry
            ? entry
            : throw new ArgumentException($"{doubt} is not one known doubt.", nameof(doubt));

    /// <summary>The entries of all doubts of a record, the heaviest first; bits that are not known are passed over.</summary>
    public static IEnumerable<DoubtEntry> In(Doubts doubts) => All.Where(entry => (doubts & entry.Doubt) != 0);

    /// <summary>The doubt of a code, without regard to case; null if there is none.</summary>
    public static Doubts? Find(string code) => ByCode.TryGetValue(code, out var doubt) ? doubt : null;

    /// <summary>Sum of the weights of all doubts of a record: its place in the review queue.</summary>
    public static int WeightOf(Doubts doubts)
    {
        var sum = 0;
        for (var bits = (uint)doubts; bits != 0; bits &= bits - 1)
            sum += ByBit[BitOperations.TrailingZeroCount(bits)]?.Weight ?? 0;
        return sum;
    }

    private static DoubtEntry Entry(Doubts doubt, int weight, string title)
    {
        var name = doubt.ToString();
        return new(doubt, char.ToLowerInvariant(name[0]) + name[1..], weight, title);
    }
}
