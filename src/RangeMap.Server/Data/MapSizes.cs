using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>The square sizes that maps come in, coarsest first.</summary>
internal static class MapSizes
{
    public static IReadOnlyList<SquareSize> All { get; } =
        [SquareSize.Km100, SquareSize.Km10, SquareSize.Km5, SquareSize.Km2, SquareSize.Km1, SquareSize.M100];
}
