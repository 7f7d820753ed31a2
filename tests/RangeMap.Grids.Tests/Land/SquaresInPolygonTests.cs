using CsCheck;
using NetTopologySuite.Geometries;

namespace RangeMap.Grids.Tests;

public sealed class SquaresInPolygonTests
{
    private static readonly INationalGrid British = NationalGrid.Get(GridId.British);

    /// <summary>A star round a point: a valid ring, convex or not.</summary>
    private static readonly Gen<EastNorth[]> Star =
        from easting in Gen.Double[200_000, 500_000]
        from northing in Gen.Double[200_000, 900_000]
        from radii in Gen.Double[2_000, 60_000].Array[3, 12]
        select radii.Select((radius, k) => (radius, angle: 2 * Math.PI * k / radii.Length))
            .Select(p => new EastNorth(easting + p.radius * Math.Cos(p.angle), northing + p.radius * Math.Sin(p.angle))).ToArray();

    [Theory]
    [InlineData(SquareRule.Touches)]
    [InlineData(SquareRule.Centre)]
    [InlineData(SquareRule.Most)]
    public void SquaresAreThoseThatAnotherGeometryLibraryFinds(SquareRule rule) => Gen.Select(Star, SomeGrids.OneOf(SquareSize.Km10, SquareSize.Km5)).Sample((star, size) =>
    {
        EastNorth[] ring = [.. star, star[0]];
        var shape = Polygon(ring);
        var found = SquaresInPolygon.OnPlane(British, size, [ring], rule).ToHashSet();
        foreach (var square in SquaresRound(ring, size))
        {
            // A share within a millionth of the rule's limit may fall either way.
            var share = Polygon(SquareOutline.OnOwnPlane(square)).Intersection(shape).Area / ((double)square.SideMetres * square.SideMetres);
            var holds = rule switch
            {
                SquareRule.Touches => share > 1e-6 ? true : share == 0 ? false : (bool?)null,
                SquareRule.Centre => shape.Contains(new Point(square.Centre.Easting, square.Centre.Northing)),
                _ => Math.Abs(share - 0.5) > 1e-6 ? share > 0.5 : null,
            };
            if (holds is { } expected)
                Assert.True(expected == found.Contains(square), $"{square} {share}");
        }
    }, iter: 60);

    [Fact]
    public void AHoleIsNotInThePolygon()
    {
        EastNorth[][] rings = [Box(400_000, 100_000, 450_000), Box(410_000, 110_000, 440_000)];
        Assert.Equal(25 - 9, SquaresInPolygon.OnPlane(British, SquareSize.Km10, rings, SquareRule.Centre).Count);
        Assert.Equal(25 - 9, SquaresInPolygon.OnPlane(British, SquareSize.Km10, rings, SquareRule.Most).Count);
    }

    [Fact]
    public void SquaresOutsideTheLettersAreLeftOut()
    {
        var west = new GeoPolygon([[new(49, -12), new(49, -5), new(51, -5), new(51, -12), new(49, -12)]]);
        var squares = SquaresInPolygon.Of(British, SquareSize.Km10, west, SquareRule.Touches);
        Assert.NotEmpty(squares);
        Assert.All(squares, square => Assert.True(British.Contains(square.Centre)));
    }

    [Fact]
    public void LongEdgesFollowTheParallel()
    {
        // Along 55 N the middle of an edge from 4 W to 0 lies 2.5 km south of the straight line on the plane (sagitta of the parallel: 128 km squared x tan 55 / 2R).
        var box = new GeoPolygon([[new(54, -4), new(54, 0), new(55, 0), new(55, -4), new(54, -4)]]);
        var top = British.FromLatLon(new(55, -2));
        var squares = SquaresInPolygon.Of(British, SquareSize.Km1, box, SquareRule.Touches);
        Assert.Equal(Math.Floor(top.Northing / 1000) * 1000, squares.Where(square => square.Easting == 400_000).Max(square => square.Northing));
    }

    [Fact]
    public void APolygonNeedsClosedRings()
    {
        Assert.Throws<ArgumentException>(() => new GeoPolygon([]));
        Assert.Throws<ArgumentException>(() => new GeoPolygon([[new(0, 0), new(0, 1), new(0, 0)]]));
        Assert.Throws<ArgumentException>(() => new GeoPolygon([[new(0, 0), new(0, 1), new(1, 1), new(1, 0)]]));
    }

    private static EastNorth[] Box(double west, double south, double east)
    {
        var side = east - west;
        return [new(west, south), new(east, south), new(east, south + side), new(west, south + side), new(west, south)];
    }

    private static IEnumerable<Square> SquaresRound(EastNorth[] ring, SquareSize size)
    {
        var box = PlaneBounds.Around(ring).Grown((int)size);
        var first = Square.At(GridId.British, size, new(box.West, box.South));
        for (var easting = first.Easting; easting < box.East; easting += (int)size)
        {
            for (var northing = first.Northing; northing < box.North; northing += (int)size)
                yield return new(GridId.British, size, easting, northing);
        }
    }

    private static Polygon Polygon(EastNorth[] ring) =>
        GeometryFactory.Default.CreatePolygon(Array.ConvertAll(ring, point => new Coordinate(point.Easting, point.Northing)));
}
