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
        var km = FromSquare(square, grid.FromLatLon(nearest.Place)) / MetresPerKm;
        return km >= LeastKm && BaseGeography.Land.LandShare(square) == 0 ? km : null;
    }

    /// <summary>True for most squares with records, without looking at any coast: land touches it, or it lies in a 10 km square without sea.</summary>
    private static bool IsListedLand(Square square) =>
        square.Size is SquareSize.Km1 or SquareSize.Km2 or SquareSize.Km5 or SquareSize.Km10 ? BaseGeography.Squares.Has(square)
        : square.TryCoarsen(SquareSize.Km10, out var hectad) && BaseGeography.Squares.ShareOf(hectad) == 1;

    /// <summary>Metres from the nearest edge or corner of a square; 0 inside.</summary>
    private static double FromSquare(Square square, EastNorth point)
    {
        var east = Math.Max(0, Math.Max(square.Easting - point.Easting, point.Easting - square.Easting - square.SideMetres));
        var north = Math.Max(0, Math.Max(square.Northing - point.Northing, point.Northing - square.Northing - square.SideMetres));
        return Math.Sqrt(east * east + north * north);
    }
}
