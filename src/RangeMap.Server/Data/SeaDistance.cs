using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>How far out at sea a square lies, for the check of records at sea.</summary>
internal static class SeaDistance
{
    private const double MetresPerKm = 1000;

    /// <summary>The coast is good to some 50 m and leaves shore rocks out: nearer than this nobody is told to be in the sea.</summary>
    private const double LeastKm = 0.2;

    /// <summary>Kilometres to a square that lies wholly in the sea from the land nearest to its middle; null when land touches it or is very near, and outside the islands and their seas.</summary>
    public static double? Km(Square square)
    {
        if (IsListedLand(square))
            return null;
        var grid = NationalGrid.Get(square.Grid);
        var middle = grid.ToLatLon(square.Centre);
        if (NationalGrid.ForPlace(middle) is null || BaseGeography.Land.Nearest(middle) is not { } nearest)
            return null;
        var km = SquareDistance.Metres(square, nearest.Place) / MetresPerKm;
        return km >= LeastKm && BaseGeography.Land.LandShare(square) == 0 ? km : null;
    }

    /// <summary>True for a square of 10 km that is all land.</summary>
    public static bool HasNone(Square hectad) => BaseGeography.Squares.ShareOf(hectad) == 1;

    /// <summary>
    /// True for most squares with records, without looking at any coast: land touches it, or it lies in a 10 km square without
    /// sea, or land touches its 1 km square and all eight around that, so that it lies in no more than a creek.
    /// </summary>
    private static bool IsListedLand(Square square)
    {
        var squares = BaseGeography.Squares;
        if (square.Size is SquareSize.Km1 or SquareSize.Km2 or SquareSize.Km5 or SquareSize.Km10)
            return squares.Has(square);
        if (!square.TryCoarsen(SquareSize.Km10, out var hectad) || !square.TryCoarsen(SquareSize.Km1, out var monad))
            return false;
        return HasNone(hectad) || (squares.Has(monad) && SquareNeighbours.Of(monad).All(squares.Has));
    }
}
