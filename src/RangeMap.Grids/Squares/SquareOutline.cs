namespace RangeMap.Grids;

/// <summary>
/// The outline of a square as a closed ring, anticlockwise from the south-west corner, the first point repeated at the end.
/// A straight edge on the square's own plane is curved on every other, so edges get further points there.
/// </summary>
/// <remarks>
/// Between two corners, the true edge of a 10 km square of a national grid bends away from the straight line by at most
/// 3.5 m in latitude/longitude, of a 100 km square by 361 m, falling with the square of the number of pieces. With the
/// pieces used here it is below 1 m for every size. The European and the UTM grids reach far north, where parallels bend
/// more, and far from their middles, where their own lines do: there the bend is measured. On planes turned or stretched
/// against each other the bend is smaller still.
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

    /// <summary>
    /// The pieces needed on the grids that reach far: the middle of each edge is held against the middle between its ends.
    /// The bend falls with the square of the pieces, so the root of the bend over half a metre is enough, with half a metre to spare.
    /// </summary>
    private static int PiecesForBend(Square square, INationalGrid grid, EastNorth[] corners)
    {
        if (square.Grid is not (GridId.European or GridId.UtmNorth or GridId.UtmSouth))
            return 1;
        var greatest = 0.0;
        var from = grid.ToLatLon(corners[0]);
        for (var edge = 0; edge < 4; edge++)
        {
            var to = grid.ToLatLon(corners[edge + 1]);
            var middle = grid.ToLatLon(new((corners[edge].Easting + corners[edge + 1].Easting) / 2, (corners[edge].Northing + corners[edge + 1].Northing) / 2));
            greatest = Math.Max(greatest, OffTheLine(from, middle, to));
            from = to;
        }

        return Math.Max(1, (int)Math.Ceiling(Math.Sqrt(greatest / 0.5)));
    }

    /// <summary>How far, in metres, a place lies from the middle of two others on the plane of latitude and longitude; turns round the date line are taken the short way.</summary>
    private static double OffTheLine(LatLon from, LatLon place, LatLon to)
    {
        const double MetresPerDegree = 111_300;
        var north = place.Latitude - (from.Latitude + to.Latitude) / 2;
        var east = (Math.IEEERemainder(place.Longitude - from.Longitude, 360) + Math.IEEERemainder(place.Longitude - to.Longitude, 360)) / 2;
        return MetresPerDegree * Math.Sqrt(north * north + Math.Pow(east * Math.Cos(place.Latitude * Angle.RadiansPerDegree), 2));
    }

    private static EastNorth[] Densified(Square square, INationalGrid grid)
    {
        var corners = OnOwnPlane(square);
        var pieces = Math.Max(Pieces(square.Size), PiecesForBend(square, grid, corners));
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
