using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>How a point with an uncertain radius lies to the squares of a grid.</summary>
internal static class Circle
{
    private static readonly SquareSize[] Sizes = Enum.GetValues<SquareSize>();

    /// <summary>The smallest square of side 2u or more that holds the whole circle of radius u; null if none does.</summary>
    public static Square? SmallestSquare(INationalGrid grid, LatLon point, double radiusMetres)
    {
        var at = grid.FromLatLon(point);
        foreach (var size in Sizes)
        {
            if ((int)size < 2 * radiusMetres)
                continue;
            var square = Square.At(grid.Id, size, at);
            var margin = Math.Min(
                Math.Min(at.Easting - square.Easting, square.Easting + square.SideMetres - at.Easting),
                Math.Min(at.Northing - square.Northing, square.Northing + square.SideMetres - at.Northing));
            if (margin >= radiusMetres)
                return square;
        }

        return null;
    }

    /// <summary>Metres on the square's own plane from the square to the point; 0 inside.</summary>
    public static double DistanceToSquare(Square square, LatLon point)
    {
        var at = NationalGrid.Get(square.Grid).FromLatLon(point);
        var east = Math.Max(Math.Max(square.Easting - at.Easting, at.Easting - square.Easting - square.SideMetres), 0);
        var north = Math.Max(Math.Max(square.Northing - at.Northing, at.Northing - square.Northing - square.SideMetres), 0);
        return Math.Sqrt(east * east + north * north);
    }
}
