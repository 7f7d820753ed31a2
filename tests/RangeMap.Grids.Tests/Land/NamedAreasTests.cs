using System.Text;

namespace RangeMap.Grids.Tests;

public class NamedAreasTests
{
    // Two invented regions: a box of about 28 km by 44 km in the middle of a country, and another 1 degree east of it.
    private static readonly NamedAreas Areas = NamedAreas.Read(Json(Box("Westland", -2.2, 53.0, -1.8, 53.4), Box("Eastland", -0.8, 53.0, -0.4, 53.4)), "name");

    [Theory]
    [InlineData("SK0050", "Westland")]
    [InlineData("SK3050", "Westland")]
    [InlineData("SK8050", "Eastland")]
    [InlineData("SK5850", "Eastland")]
    public void APlaceIsOfTheRegionThatHoldsItOrOfTheNearest(string square, string region) =>
        Assert.Equal(region, Areas.HoldingOrNearest(NationalGrid.Get(GridId.British).ToLatLon(GridReference.Parse(square).Centre)));

    [Fact]
    public void FarAwayOrWithoutRegionsThereIsNone()
    {
        Assert.Null(Areas.HoldingOrNearest(new(-33.87, 151.21)));
        Assert.Null(NamedAreas.None.HoldingOrNearest(new(53.2, -2.0)));
    }

    [Fact]
    public void ALargeSquareASmallWayOffARegionDoesNotTouchIt()
    {
        // The eastern edge of Westland lies at about easting 413,400; the 10 km square begins 6.6 km further east.
        Assert.Equal(6.6, Areas.KmOutside("Westland", GridReference.Parse("SK25"))!.Value, 0.3);
    }

    [Fact]
    public void ASmallRegionInTheMiddleOfASquareTouchesIt()
    {
        var islet = NamedAreas.Read(Json(Box("Islet", -1.9260, 53.0950, -1.9240, 53.0960)), "name");
        Assert.Equal(0, islet.KmOutside("Islet", GridReference.Parse("SK05")));
        Assert.NotEqual(0, islet.KmOutside("Islet", GridReference.Parse("SK15")));
    }

    [Fact]
    public void ASquareThatTouchesARegionIsNotOutsideIt()
    {
        Assert.Equal(0, Areas.KmOutside("Westland", GridReference.Parse("SK05")));
        Assert.Equal(0, Areas.KmOutside("Westland", GridReference.Parse("SK")));
    }

    [Fact]
    public void ASquareFarOffIsAsFarOutsideAsItsNearestCorner()
    {
        var square = GridReference.Parse("SK8050");
        // The eastern edge at 1.8 W on latitude 53: one degree of longitude is 67.1 km there (WGS84).
        var west = NationalGrid.Get(GridId.British).ToLatLon(new(square.Easting, square.Northing)).Longitude;
        Assert.Equal((west + 1.8) * 67.1, Areas.KmOutside("Westland", square)!.Value, 1.0);
    }

    [Fact]
    public void ASquareOnTheEdgeIsNotCoveredAndOneInTheMiddleIs()
    {
        Assert.True(Areas.Covers("Westland", GridReference.Parse("SK0060")));
        Assert.False(Areas.Covers("Westland", GridReference.Parse("SK")));
        Assert.False(Areas.Covers("Westland", GridReference.Parse("SK8050")));
    }

    [Fact]
    public void ANameThatIsNotKnownHasNoAnswer()
    {
        Assert.Null(Areas.KmOutside("Nowhere", GridReference.Parse("SK05")));
        Assert.Null(Areas.Covers("Nowhere", GridReference.Parse("SK05")));
    }

    [Fact]
    public void ALaterRegionOfTheSameNameCounts()
    {
        var moved = Areas.With(NamedAreas.Read(Json(Box("WESTLAND", -0.8, 53.0, -0.4, 53.4)), "name"));
        Assert.Equal(["Eastland", "Westland"], moved.Names);
        Assert.NotEqual(0, moved.KmOutside("Westland", GridReference.Parse("SK05")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("{\"features\":[{\"properties\":{\"name\":\"a\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[[0,50],[1,50],[0,50]]]}}]}")]
    [InlineData("{\"features\":[{\"properties\":{\"name\":\"a\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[[0],[1,50],[0,50],[0]]]}}]}")]
    public void WhatIsNoRegionIsSaidToBeNone(string text) =>
        Assert.Throws<FormatException>(() => NamedAreas.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)), "name"));

    private static string Box(string name, double west, double south, double east, double north) => FormattableString.Invariant(
        $"{{\"type\":\"Feature\",\"properties\":{{\"name\":\"{name}\"}},\"geometry\":{{\"type\":\"Polygon\",\"coordinates\":[[[{west},{south}],[{east},{south}],[{east},{north}],[{west},{north}],[{west},{south}]]]}}}}");

    private static MemoryStream Json(params string[] features) => new(Encoding.UTF8.GetBytes($"{{\"type\":\"FeatureCollection\",\"features\":[{string.Join(',', features)}]}}"));
}
