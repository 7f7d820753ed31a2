using CsCheck;

namespace RangeMap.Grids.Tests;

public sealed class SquareFinderTests
{
    private static readonly INationalGrid British = NationalGrid.Get(GridId.British);

    [Theory]
    [InlineData(530_850.5, 180_150.5, 0, "TQ3085080150")]
    [InlineData(530_850.5, 180_150.5, 0.3, "TQ3085080150")]
    [InlineData(530_855, 180_155, 4, "TQ30858015")]
    [InlineData(530_850, 180_150, 40, "TQ308801")]
    [InlineData(530_850, 180_150, 51, "TQ3080")]
    [InlineData(530_501, 180_501, 500, "TQ38A")] // reaches a metre over the eastern edge of TQ3080
    [InlineData(531_000, 181_000, 900, "TQ38A")]
    [InlineData(530_900, 180_500, 200, "TQ38A")] // across the edge of two 1 km squares
    [InlineData(550_000, 150_000, 10, "TQ")] // on the corner of four 10 km squares
    [InlineData(550_000, 150_000, 60_000, "")]
    [InlineData(500_000, 150_000, 10, "")] // on the edge of two 100 km squares
    public void TheSmallestSquareThatHoldsTheCircleIsFound(double easting, double northing, double radius, string expected)
    {
        var square = SquareFinder.SquareForCircle(British, British.ToLatLon(new(easting, northing)), radius);
        Assert.Equal(expected, square?.ToString() ?? "");
    }

    [Fact]
    public void TheSquareFoundHoldsTheCircleAndNoFinerOneDoes() =>
        (from easting in Gen.Double[1, 699_999]
         from northing in Gen.Double[1, 1_299_999]
         from power in Gen.Double[-1, 4.5]
         select (new EastNorth(easting, northing), Math.Pow(10, power))).Sample((point, radius) =>
    {
        var place = British.ToLatLon(point);
        point = British.FromLatLon(place);
        var found = SquareFinder.SquareForCircle(British, place, radius);
        var fits = SquareFinder.Sizes.Where(size => Square.At(GridId.British, size, point) is var s && (int)size >= 2 * radius
            && point.Easting - radius >= s.Easting && point.Easting + radius < s.Easting + s.SideMetres
            && point.Northing - radius >= s.Northing && point.Northing + radius < s.Northing + s.SideMetres).ToList();
        Assert.Equal(fits.Count == 0 ? null : fits[0], found?.Size);
    }, iter: 5_000);

    [Fact]
    public void APlaceOutsideTheLettersHasNoSquare()
    {
        Assert.Null(SquareFinder.SquareForCircle(British, new(40, 0), 1));
        Assert.Null(SquareFinder.SquareAt(British, new(40, 0), SquareSize.Km10));
        Assert.Equal("TG51", SquareFinder.SquareAt(British, new(52.658007833, 1.716073973), SquareSize.Km10)?.ToString());
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void ARadiusMustBeANumberOfZeroOrMore(double radius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SquareFinder.SquareForCircle(British, new(52, 0), radius));

    [Fact]
    public void CoarserSquaresFollowFinestFirstWithoutAQuadrantForATetradThatStraddlesTwo()
    {
        Assert.Equal(["TQ308801", "TQ3080", "TQ38A", "TQ38SW", "TQ38", "TQ"], SquareFinder.WithCoarser(GridReference.Parse("TQ308801")).Select(s => s.ToString()));
        Assert.Equal(["TQ38M", "TQ38", "TQ"], SquareFinder.WithCoarser(GridReference.Parse("TQ38M")).Select(s => s.ToString()));
    }

    [Fact]
    public void NeighboursAreTheEightSquaresAround()
    {
        var around = SquareNeighbours.Of(GridReference.Parse("TQ38"));
        Assert.Equal(["TQ39", "TQ49", "TQ48", "TQ47", "TQ37", "TQ27", "TQ28", "TQ29"], around.Select(s => s.ToString()));
        Assert.Equal(["SV01", "SV11", "SV10"], SquareNeighbours.Of(GridReference.Parse("SV00")).Select(s => s.ToString()));
    }
}
