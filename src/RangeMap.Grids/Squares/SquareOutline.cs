namespace RangeMap.Grids;

/// <summary>
/// The outline of a square as a closed ring, anticlockwise from the south-west corner, the first point repeated at the end.
/// A straight edge on the square's own plane is curved on every other, so edges get further points there.
/// </summary>
/// <remarks>
/// Between two corners, the true edge of a 10 km square bends away from the straight line by at most 3.5 m in
/// latitude/longitude, of a 100 km square by 361 m, falling with the square of the number of pieces. With the pieces used
/// here it is below 1 m for every size. Beyond 60 degrees it grows with the tangent of the latitude, and edges get more pieces. On planes turned or stretched against each other the bend is smaller still.
/// </remarks>
public static class SquareOutline
{
    /// <summary>The ring on the square's own plane: four corners and the first again.</summary>
    public static EastNorth[] OnOwnPlane(Square square)
    {
        double west = square.Easting, south = square.Northing, east = west + square.SideMetres, north = south + square.SideMetres;
        return [new(west, south), new(east, south), new(east, north), new(west, north), new(west, south)];
    }

    /// <summary>The ring in latitude and longitude.</summary>
    public static LatLon[] InLatLon(Square square)
    {
        var grid = NationalGrid.Get(square.Grid);
        return Array.ConvertAll(Densified(square, grid), grid.ToLatLon);
    }

    /// <summary>The ring on another plane: that of a national grid or of a map. On the square's own plane, its corners.</summary>
    public static EastNorth[] On(Square square, IPlane plane)
    {
        var grid = NationalGrid.Get(square.Grid);
        return ReferenceEquals(grid, plane) ? OnOwnPlane(square) : Array.ConvertAll(Densified(square, grid), point => plane.FromLatLon(grid.ToLatLon(point)));
    }

    /// <summary>How many pieces each edge is cut into: enough for 1 m.</summary>
    private static int Pieces(SquareSize size) => size switch
    {
        SquareSize.Km100 => 20,
        SquareSize.Km10 => 2,
        _ => 1,
    };

    /// <summary>The pieces needed beyond 60 degrees, where only the European and the UTM grids reach: an edge of side s bends by s^2 tan(latitude) / 8R.</summary>
    private static int PiecesFarNorth(Square square, INationalGrid grid)
    {
        const double EarthRadius = 6_371_000;
        if (square.Grid is not (GridId.European or GridId.UtmNorth or GridId.UtmSouth))
            return 1;
        var latitude = Math.Min(Math.Abs(grid.ToLatLon(square.Centre).Latitude) + 1, 86); // 1: the edge towards the pole
        var bend = (double)square.SideMetres * square.SideMetres / (8 * EarthRadius) * Math.Tan(latitude * Angle.RadiansPerDegree);
        return latitude < 60 ? 1 : (int)Math.Ceiling(Math.Sqrt(bend / 0.5));
    }

    private static EastNorth[] Densified(Square square, INationalGrid grid)
    {
        var corners = OnOwnPlane(square);
        var pieces = Math.Max(Pieces(square.Size), PiecesFarNorth(square, grid));
        if (pieces == 1)
            return corners;
        var ring = new EastNorth[4 * pieces + 1];
        for (var k = 0; k < ring.Length - 1; k++)
        {
            EastNorth from = corners[k / pieces], to = corners[k / pieces + 1];
            var part = (double)(k % pieces) / pieces;
            ring[k] = new(from.Easting + part * (to.Easting - from.Easting), from.Northing + part * (to.Northing - from.Northing));
        }

        ring[^1] = ring[0];
        return ring;
    }
}
