using RangeMap.Grids;

namespace RangeMap.Benchmarks;

/// <summary>Places spread over Great Britain by a seed, as references and as latitude and longitude.</summary>
internal static class SomePlaces
{
    public const int Count = 10_000;

    private static readonly SquareSize[] Sizes = [SquareSize.M100, SquareSize.Km1, SquareSize.Km2, SquareSize.Km10];

    public static string[] References() => [.. Points().Select((point, i) => Square.At(GridId.British, Sizes[i % Sizes.Length], point).ToString())];

    public static LatLon[] Positions() => [.. Points().Select(NationalGrid.Get(GridId.British).ToLatLon)];

    private static IEnumerable<EastNorth> Points()
    {
        var chance = new Random(1);
        for (var i = 0; i < Count; i++)
            yield return new(chance.Next(250_000, 600_000), chance.Next(100_000, 900_000));
    }
}
