namespace RangeMap.Grids.Tests;

public class SquareDistanceTests
{
    [Theory]
    [InlineData("SU12", "SU12", 0)]
    [InlineData("SU12", "SU13", 0)]
    [InlineData("SU12", "SU23", 0)]
    [InlineData("SU12", "SU1224", 0)]
    [InlineData("SU12", "SU32", 10)]
    [InlineData("SU12", "SU45", 28.284)] // 20 km east and 20 km north
    [InlineData("SU1020", "SU1320", 2)]
    public void SquaresOfOneGridAreAsFarAsTheirNearestEdges(string a, string b, double km)
    {
        Assert.Equal(km, SquareDistance.Km(GridReference.Parse(a), GridReference.Parse(b)), 0.001);
        Assert.Equal(km, SquareDistance.Km(GridReference.Parse(b), GridReference.Parse(a)), 0.001);
    }

    // Great-circle distance of the middles by GeographicLib's solution for the sphere would be the same formula; the figure is
    // that of the two points on the common British plane instead, which stretches by up to 0.5 % there.
    [Fact]
    public void SquaresOfTwoGridsAreAboutAsFarAsOnACommonPlane()
    {
        Square irish = GridReference.Parse("J3374"), british = GridReference.Parse("NX0560");
        var plane = NationalGrid.Get(GridId.British);
        var other = plane.FromLatLon(NationalGrid.Get(GridId.Irish).ToLatLon(irish.Centre));
        var onPlane = Math.Sqrt(Math.Pow(other.Easting - british.Centre.Easting, 2) + Math.Pow(other.Northing - british.Centre.Northing, 2)) / 1000 - 1;
        Assert.Equal(onPlane, SquareDistance.Km(irish, british), 0.005 * onPlane);
    }

    [Theory]
    [InlineData("SU1234", 412_500, 134_500, 0)]
    [InlineData("SU1234", 412_500, 134_000, 0)]
    [InlineData("SU1234", 413_300, 135_400, 500)]
    public void APointIsAsFarAsTheNearestEdge(string square, double easting, double northing, double metres)
    {
        var point = NationalGrid.Get(GridId.British).ToLatLon(new(easting, northing));
        Assert.Equal(metres, SquareDistance.Metres(GridReference.Parse(square), point), 0.01);
    }
}
