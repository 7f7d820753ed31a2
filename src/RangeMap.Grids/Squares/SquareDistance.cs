namespace RangeMap.Grids;

/// <summary>How far squares lie from points and from each other.</summary>
public static class SquareDistance
{
    private const double MetresPerKm = 1000;

    /// <summary>Metres on the square's own plane from the square to the point; 0 inside.</summary>
    public static double Metres(Square square, LatLon point)
    {
        var at = NationalGrid.Get(square.Grid).FromLatLon(point);
        return Length(Gap(square.Easting, square.SideMetres, at.Easting, 0), Gap(square.Northing, square.SideMetres, at.Northing, 0));
    }

    /// <summary>Kilometres between the nearest edges of two squares of one grid, or about as much for squares of two grids; 0 where they touch.</summary>
    public static double Km(Square a, Square b)
    {
        if (a.Grid != b.Grid)
            return Math.Max(0, GreatCircle.Km(Middle(a), Middle(b)) - (a.SideMetres + b.SideMetres) / (2 * MetresPerKm));
        return Length(Gap(a.Easting, a.SideMetres, b.Easting, b.SideMetres), Gap(a.Northing, a.SideMetres, b.Northing, b.SideMetres)) / MetresPerKm;
    }

    private static double Gap(double a, double sideOfA, double b, double sideOfB) => Math.Max(0, Math.Max(b - a - sideOfA, a - b - sideOfB));

    private static double Length(double east, double north) => Math.Sqrt(east * east + north * north);

    private static LatLon Middle(Square square) => NationalGrid.Get(square.Grid).ToLatLon(square.Centre);
}
