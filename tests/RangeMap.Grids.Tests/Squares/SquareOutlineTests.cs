using CsCheck;

namespace RangeMap.Grids.Tests;

public sealed class SquareOutlineTests
{
    [Fact]
    public void RingsAreClosedAnticlockwiseAndHoldTheMiddle() => SomeGrids.Square.Sample(square =>
    {
        var grid = NationalGrid.Get(square.Grid);
        var middle = grid.ToLatLon(square.Centre);
        Check(SquareOutline.OnOwnPlane(square), square.Centre);
        Check(Array.ConvertAll(SquareOutline.InLatLon(square), p => new EastNorth(p.Longitude, p.Latitude)), new(middle.Longitude, middle.Latitude));
        Check(SquareOutline.On(square, WebMercatorPlane.Instance), WebMercatorPlane.Instance.FromLatLon(middle));
        if (square.Grid is not (GridId.European or GridId.UtmNorth or GridId.UtmSouth)) // those reach too far for the British plane
            Check(SquareOutline.On(square, NationalGrid.Get(GridId.British)), NationalGrid.Get(GridId.British).FromLatLon(middle));
    }, iter: 1_000);

    [Fact]
    public void NoPointOfATrueEdgeLiesMoreThanAMetreFromTheDrawnLine() =>
        (from grid in SomeGrids.Grid
         from size in SomeGrids.OneOf(SquareSize.Km1, SquareSize.Km2, SquareSize.Km5, SquareSize.Km10, SquareSize.Km100)
         from point in SomeGrids.PointOf(grid)
         select Square.At(grid, size, point))
        .Sample(square => Assert.InRange(GreatestDeviation(square), 0, 1.0), iter: 1_000);

    [Theory]
    [InlineData(7_250_000, 5_170_000)] // far east of the middle of the European grid, just under 60 degrees north
    [InlineData(2_000_000, 5_400_000)]
    [InlineData(7_400_000, 1_000_000)]
    public void AEuropeanSquareFarFromTheMiddleOfItsGridIsDrawnToTheMetre(double easting, double northing) =>
        Assert.InRange(GreatestDeviation(Square.At(GridId.European, SquareSize.Km10, new(easting, northing))), 0, 1.0);

    [Fact]
    public void ThePointsOfASquareLieWithinItsDrawnOutline() =>
        (from square in SomeGrids.Square.Where(s => s.Size >= SquareSize.M100)
         from east in Gen.Double[1.5, square.SideMetres - 1.5]
         from north in Gen.Double[1.5, square.SideMetres - 1.5]
         select (square, new EastNorth(square.Easting + east, square.Northing + north))).Sample((square, point) =>
    {
        var place = NationalGrid.Get(square.Grid).ToLatLon(point);
        Assert.True(IsInside(SquareOutline.InLatLon(square), place));
    }, iter: 5_000);

    [Fact]
    public void AnIrishSquareIsTurnedByAboutFiveDegreesOnTheBritishPlane()
    {
        // Difference of the convergences of the two grids at Belfast, 4.89 degrees clockwise: computed with an independent script.
        var ring = SquareOutline.On(GridReference.Parse("J37"), NationalGrid.Get(GridId.British));
        var turn = Math.Atan2(ring[1].Northing - ring[0].Northing, ring[1].Easting - ring[0].Easting) * 180 / Math.PI;
        Assert.Equal(-4.89, turn, 0.05);
    }

    [Fact]
    public void ABritishSquareOnTheBritishPlaneIsItsFourCorners() =>
        Assert.Equal(SquareOutline.OnOwnPlane(GridReference.Parse("TQ")), SquareOutline.On(GridReference.Parse("TQ"), NationalGrid.Get(GridId.British)));

    private static void Check(EastNorth[] ring, EastNorth middle)
    {
        Assert.Equal(ring[0], ring[^1]);
        double area = 0;
        for (var k = 1; k < ring.Length; k++)
        {
            var cross = (ring[k - 1].Easting - middle.Easting) * (ring[k].Northing - middle.Northing) - (ring[k].Easting - middle.Easting) * (ring[k - 1].Northing - middle.Northing);
            Assert.True(cross > 0); // the middle lies to the left of every edge
            area += cross;
        }

        Assert.True(area > 0);
    }

    private static bool IsInside(LatLon[] ring, LatLon point)
    {
        var inside = false;
        for (var k = 1; k < ring.Length; k++)
        {
            LatLon a = ring[k - 1], b = ring[k];
            if (a.Latitude > point.Latitude != b.Latitude > point.Latitude &&
                point.Longitude < a.Longitude + (point.Latitude - a.Latitude) / (b.Latitude - a.Latitude) * (b.Longitude - a.Longitude))
                inside = !inside;
        }

        return inside;
    }

    /// <summary>The greatest distance, in metres, of points along the true edges from the ring drawn straight in latitude and longitude.</summary>
    private static double GreatestDeviation(Square square)
    {
        var grid = NationalGrid.Get(square.Grid);
        var ring = SquareOutline.InLatLon(square);
        var corners = SquareOutline.OnOwnPlane(square);
        double greatest = 0;
        for (var edge = 0; edge < 4; edge++)
        {
            for (var k = 0; k <= 80; k++)
            {
                var part = k / 80.0;
                var on = new EastNorth(
                    corners[edge].Easting + part * (corners[edge + 1].Easting - corners[edge].Easting),
                    corners[edge].Northing + part * (corners[edge + 1].Northing - corners[edge].Northing));
                greatest = Math.Max(greatest, Distance(grid.ToLatLon(on), ring));
            }
        }

        return greatest;
    }

    private static double Distance(LatLon point, LatLon[] ring)
    {
        var east = 111_300 * Math.Cos(point.Latitude * Math.PI / 180);
        var least = double.PositiveInfinity;
        for (var k = 1; k < ring.Length; k++)
        {
            double ax = (ring[k - 1].Longitude - point.Longitude) * east, ay = (ring[k - 1].Latitude - point.Latitude) * 111_300;
            double bx = (ring[k].Longitude - point.Longitude) * east, by = (ring[k].Latitude - point.Latitude) * 111_300;
            double dx = bx - ax, dy = by - ay;
            var t = Math.Clamp(-(ax * dx + ay * dy) / (dx * dx + dy * dy), 0, 1);
            least = Math.Min(least, Math.Sqrt((ax + t * dx) * (ax + t * dx) + (ay + t * dy) * (ay + t * dy)));
        }

        return least;
    }
}
