namespace RangeMap.Change.Tests;

/// <summary>An island for tests, about 350 km wide and 900 km long; it lies nowhere.</summary>
internal static class InventedIsland
{
    internal static SimulatedLand Land { get; } = new(Cells());

    internal static SimulatedWorld World(long rows, ulong seed = 1) => new(Land, new() { Rows = rows, Seed = seed, ArrivingSpeed = 9 });

    private static IEnumerable<LandCell> Cells()
    {
        for (var north = 0; north < 90; north++)
        {
            for (var east = 0; east < 36; east++)
            {
                double x = (east - 17.5) / 18, y = (north - 44.5) / 45;
                if (x * x + y * y * y * y <= 0.9)
                    yield return LandCell.British(200_000 + east * 10_000, 100_000 + north * 10_000);
            }
        }
    }
}
