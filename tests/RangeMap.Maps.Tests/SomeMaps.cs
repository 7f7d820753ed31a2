using CsCheck;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps.Tests;

/// <summary>Invented maps by chance, seeded by the property tests.</summary>
internal static class SomeMaps
{
    private static readonly Gen<PeriodCount[]> Counts =
        Gen.Select(Gen.Int[0, 40], Gen.Int[0, 40], Gen.Int[1850, 1999], Gen.Int[2000, 2030], (a, b, early, late) => (PeriodCount[])
        [
            a + b == 0 || a > 0 ? new(Math.Max(a, 1), 0, a + 1, early, 1999) : new(0, 0, 2, 0, 0),
            b > 0 ? new(b, 1, b, late, 2030) : default,
        ]);

    /// <summary>British squares anywhere between the Channel and Shetland, and Irish ones, of one size.</summary>
    public static Gen<PresenceMap> Any { get; } =
        Gen.OneOf(SquareSize.Km1, SquareSize.Km2, SquareSize.Km5, SquareSize.Km10, SquareSize.Km100).SelectMany(size => Gen
            .Select(Gen.Bool, Gen.Double[0, 1], Gen.Double[0, 1], Counts, (irish, east, north, counts) => Found(size, irish, east, north, counts))
            .List[1, 60].Select(squares => Drawing.Map(size, Drawing.TwoPeriods, squares.DistinctBy(square => square.Square))));

    private static PresenceSquare Found(SquareSize size, bool irish, double east, double north, PeriodCount[] counts)
    {
        var place = irish ? new EastNorth(20_000 + east * 350_000, 20_000 + north * 440_000) : new(100_000 + east * 550_000, 20_000 + north * 1_150_000);
        var square = Square.At(irish ? GridId.Irish : GridId.British, size, place);
        var with = counts.Where(count => count.Records > 0).ToArray();
        return new(square, with.Min(count => count.FirstYear), with.Max(count => count.LastYear), counts);
    }
}
