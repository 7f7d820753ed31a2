using NetTopologySuite.Geometries;
using RangeMap.Grids;

namespace RangeMap.Maps.Tests.Outlines;

public class JoinedSquaresTests
{
    [Fact]
    public void SquaresSideBySideLoseTheLineBetweenThem()
    {
        var area = Assert.Single(JoinedSquares.Of(Squares((40, 30), (41, 30), (42, 30))));
        var ring = Assert.Single(area);
        // Eight sides of 10 km each, and the first corner again.
        Assert.Equal(9, ring.Length);
        Assert.Equal(ring[0], ring[^1]);
    }

    [Fact]
    public void ARingOfSquaresHasAHoleThatRunsTheOtherWay()
    {
        var area = Assert.Single(JoinedSquares.Of(Squares([.. from x in Enumerable.Range(40, 3) from y in Enumerable.Range(30, 3) where (x, y) != (41, 31) select (x, y)])));
        Assert.Equal(2, area.Count);
        Assert.True(Ring(area[0]).IsCCW);
        Assert.False(Ring(area[1]).IsCCW);
    }

    [Fact]
    public void SquaresThatMeetAtACornerStayTwoAreas() => Assert.Equal(2, JoinedSquares.Of(Squares((40, 30), (41, 31))).Count);

    [Fact]
    public void SquaresOfTwoGridsAreNotJoined() =>
        Assert.Equal(2, JoinedSquares.Of([new(GridId.British, SquareSize.Km10, 300_000, 300_000), new(GridId.Irish, SquareSize.Km10, 300_000, 300_000)]).Count);

    [Fact]
    public void NoSquaresHaveNoArea() => Assert.Empty(JoinedSquares.Of([]));

    [Fact]
    public void AnyPatchworkGivesValidAreasAsLargeAsItsSquaresTogether()
    {
        var random = new Random(3);
        for (var draw = 0; draw < 200; draw++)
        {
            (int, int)[] cells = [.. (from x in Enumerable.Range(40, 7) from y in Enumerable.Range(30, 7) where random.Next(100) < 55 select (x, y))];
            var areas = JoinedSquares.Of(Squares(cells)).Select(area => new Polygon(Ring(area[0]), [.. area.Skip(1).Select(Ring)])).ToList();
            Assert.All(areas, area => Assert.True(area.IsValid));
            // On the plane of the grid, a square at a time: the way to degrees and back is good to a millimetre.
            Assert.Equal(cells.Length * 1e8, areas.Sum(OnPlane), 1e3);
        }
    }

    private static double OnPlane(Polygon area)
    {
        var plane = NationalGrid.Get(GridId.British);
        LinearRing Flat(LineString ring) => new([.. ring.Coordinates.Select(point => plane.FromLatLon(new(point.Y, point.X))).Select(point => new Coordinate(point.Easting, point.Northing))]);
        return new Polygon(Flat(area.ExteriorRing), [.. area.InteriorRings.Select(Flat)]).Area;
    }

    private static LinearRing Ring(LatLon[] points) => new([.. points.Select(point => new Coordinate(point.Longitude, point.Latitude))]);

    private static IEnumerable<Square> Squares(params (int X, int Y)[] cells) => cells.Select(cell => new Square(GridId.British, SquareSize.Km10, cell.X * 10_000, cell.Y * 10_000));
}
