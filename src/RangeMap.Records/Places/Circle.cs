using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>How a point with an uncertain radius lies to the squares of a grid.</summary>
internal static class Circle
{
    /// <summary>Metres on the square's own plane from the square to the point; 0 inside.</summary>
    public static double DistanceToSquare(Square square, LatLon point)
    {
        var at = NationalGrid.Get(square.Grid).FromLatLon(point);
        var east = Math.Max(Math.Max(square.Easting - at.Easting, at.Easting - square.Easting - square.SideMetres), 0);
        var north = Math.Max(Math.Max(square.Northing - at.Northing, at.Northing - square.Northing - square.SideMetres), 0);
        return Math.Sqrt(east * east + north * north);
    }
}
