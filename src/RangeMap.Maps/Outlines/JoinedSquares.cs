using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Squares of one grid and size joined into areas without the lines between them.</summary>
public static class JoinedSquares
{
    /// <summary>The areas, each as its outer ring and its holes, as latitude and longitude; outer rings run anticlockwise and holes clockwise, the first point repeated at the end.</summary>
    /// <param name="squares">Squares of any grids; those of different grids are not joined.</param>
    public static IReadOnlyList<IReadOnlyList<LatLon[]>> Of(IEnumerable<Square> squares) =>
        [.. squares.GroupBy(square => square.Grid).OrderBy(grid => grid.Key).SelectMany(grid => Areas(NationalGrid.Get(grid.Key), grid))];

    private static IEnumerable<IReadOnlyList<LatLon[]>> Areas(INationalGrid grid, IEnumerable<Square> squares)
    {
        // Metres of the grid are whole numbers, so that corners that belong together are equal.
        var (factory, side) = (new GeometryFactory(), squares.First().SideMetres);
        var joined = UnaryUnionOp.Union(squares.Select(square => (Geometry)factory.CreatePolygon(Array.ConvertAll(SquareOutline.OnOwnPlane(square), At))));
        for (var i = 0; i < (joined?.NumGeometries ?? 0); i++)
        {
            if (joined!.GetGeometryN(i) is not Polygon area)
                continue;
            yield return [Ring(grid, area.ExteriorRing, side, anticlockwise: true), .. area.InteriorRings.Select(hole => Ring(grid, hole, side, anticlockwise: false))];
        }
    }

    private static LatLon[] Ring(INationalGrid grid, LineString ring, double side, bool anticlockwise)
    {
        var points = ((LinearRing)ring).IsCCW == anticlockwise ? ring.Coordinates : ring.Coordinates.Reverse();
        return [.. Densified([.. points], side).Select(point => grid.ToLatLon(new(point.X, point.Y)))];
    }

    /// <summary>A long edge is straight on its own plane only: it gets a point for every square that it passes.</summary>
    private static IEnumerable<Coordinate> Densified(Coordinate[] ring, double side)
    {
        yield return ring[0];
        for (var i = 1; i < ring.Length; i++)
        {
            var pieces = Math.Max(1, (int)Math.Round(ring[i].Distance(ring[i - 1]) / side));
            for (var k = 1; k <= pieces; k++)
                yield return new(ring[i - 1].X + (ring[i].X - ring[i - 1].X) * k / pieces, ring[i - 1].Y + (ring[i].Y - ring[i - 1].Y) * k / pieces);
        }
    }

    private static Coordinate At(EastNorth point) => new(point.Easting, point.Northing);
}
