using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>How far a point lies from a square.</summary>
internal static class SquareDistance
{
    /// <summary>Metres on the square's own plane from the square to the point; 0 inside.</summary>
    public static double Metres(Square square, LatLon point)
    {
        var at = NationalGrid.Get(square.Grid).FromLatLon(point);
        var east = Math.Max(Math.Max(square.Easting - at.Easting, at.Easting - square.Easting - square.SideMetres), 0);
        var north = Math.Max(Math.Max(square.Northing - at.Northing, at.Northing - square.Northing - square.SideMetres), 0);
        return Math.Sqrt(east * east + north * north);
    }
}
