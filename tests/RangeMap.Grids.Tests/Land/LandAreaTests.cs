using System.Text;
using CsCheck;

namespace RangeMap.Grids.Tests;

/// <summary>Positions of towns, hills and capes: from memory to about 0.02 degree, not verified; none on land lies within 1 km of the sea unless said.</summary>
public sealed class LandAreaTests
{
    private static readonly INationalGrid British = NationalGrid.Get(GridId.British);

    [Theory]
    [InlineData("Ben Nevis", 56.797, -5.003)]
    [InlineData("Birmingham", 52.48, -1.89)]
    [InlineData("Athlone", 53.42, -7.94)]
    [InlineData("Snaefell", 54.263, -4.461)]
    [InlineData("the middle of Jersey", 49.22, -2.13)]
    [InlineData("Lough Neagh, a lake", 54.60, -6.42)]
    [InlineData("Lower Lough Erne, a lake near the border", 54.49, -7.83)]
    public void LandAndLakesAreNotSea(string name, double latitude, double longitude)
    {
        Assert.True(RealLand.Area.Contains(new(latitude, longitude)), name);
        Assert.Equal(new NearestLand(new(latitude, longitude), 0), RealLand.Area.Nearest(new(latitude, longitude)));
    }

    [Fact]
    public void WithoutTheLakesALakeIsNotLand() => Assert.False(RealLand.ReadLand("land.geojson").Contains(new(54.60, -6.42)));

    [Theory]
    [InlineData("the Irish Sea off Man", 53.80, -5.00, 15, 60)]
    [InlineData("the North Sea", 56.00, 2.50, 200, 320)]
    [InlineData("the Bristol Channel off Lundy", 51.30, -4.80, 5, 25)]
    [InlineData("the Atlantic west of Kerry", 52.00, -12.00, 70, 130)]
    public void AtSeaTheNearestLandIsToldWithItsDistance(string name, double latitude, double longitude, double leastKm, double mostKm)
    {
        var place = new LatLon(latitude, longitude);
        Assert.False(RealLand.Area.Contains(place), name);
        var nearest = RealLand.Area.Nearest(place);
        Assert.NotNull(nearest);
        Assert.InRange(nearest.Value.Km, leastKm, mostKm);
    }

    [Theory]
    [InlineData(-33.87, 151.21)]
    [InlineData(0, 0)]
    [InlineData(90, 0)]
    [InlineData(double.NaN, double.NaN)]
    [InlineData(double.PositiveInfinity, 500)]
    public void FarAwayThereIsNoLandAndNoNearest(double latitude, double longitude)
    {
        Assert.False(RealLand.Area.Contains(new(latitude, longitude)));
        Assert.Null(RealLand.Area.Nearest(new(latitude, longitude)));
    }

    [Fact]
    public void TheNearestPointOfAnIslandOfKnownShapeIsFound()
    {
        // One degree of latitude is 111.2 km on the sphere of 6371.009 km; 0.5 degree south of the southern shore is 55.6 km.
        var island = new LandArea([Box(54, -3, 55, -2)]);
        var nearest = island.Nearest(new(53.5, -2.5));
        Assert.Equal(55.6, nearest!.Value.Km, 0.3);
        Assert.Equal(54.0, nearest.Value.Place.Latitude, 0.001);
        Assert.Equal(-2.5, nearest.Value.Place.Longitude, 0.01);
    }

    [Fact]
    public void TheNearestLandIsOnTheShore() => SeaOrLand.Sample(place =>
    {
        var nearest = RealLand.Area.Nearest(place)!.Value;
        if (nearest.Km == 0)
            Assert.True(RealLand.Area.Contains(place));
        else
            Assert.True(RealLand.Area.Nearest(nearest.Place)!.Value.Km < 0.001);
    }, iter: 2_000);

    [Fact]
    public void AnIslandThatFillsHalfOfASquareIsHalfOfIt()
    {
        // The western half of SU12 with a pond of 1 km by 2 km in it. Edges are straight in degrees, so they bow by up to 0.5 m on the plane.
        var land = new LandArea([OnBritish([(410_000, 120_000), (415_000, 120_000), (415_000, 130_000), (410_000, 130_000)], [(411_000, 121_000), (411_000, 123_000), (412_000, 123_000), (412_000, 121_000)])]);
        Assert.Equal(0.48, land.LandShare(GridReference.Parse("SU12")), 4);
        Assert.Equal(0, land.LandShare(GridReference.Parse("SU22")), 6);
        Assert.Equal(0, land.LandShare(GridReference.Parse("SU1121")), 3);
        Assert.Equal(1, land.LandShare(GridReference.Parse("SU1221")), 3);
        Assert.Equal(0.0048, land.LandShare(GridReference.Parse("SU")), 6);
    }

    [Fact]
    public void TheSharesOfTheSmallSquaresMakeThatOfTheLarge() => SomeGrids.OneOf([.. RealLand.Squares.Of(GridId.British, SquareSize.Km10), .. RealLand.Squares.Of(GridId.Irish, SquareSize.Km10)]).Sample(hectad =>
    {
        var monads = from e in Enumerable.Range(0, 10)
                     from n in Enumerable.Range(0, 10)
                     select RealLand.Area.LandShare(new(hectad.Grid, SquareSize.Km1, hectad.Easting + e * 1000, hectad.Northing + n * 1000));
        Assert.Equal(RealLand.Area.LandShare(hectad), monads.Average(), 9);
    }, iter: 100);

    [Fact]
    public void TheSharesOfTheSimplifiedCoastAreThoseOfTheFullOne()
    {
        var squares = new[] { GridId.British, GridId.Irish, GridId.ChannelIslands }.SelectMany(grid => RealLand.Squares.Of(grid, SquareSize.Km10)).ToList();
        var apart = squares.Select(square => RealLand.Area.LandShare(square) - RealLand.Squares.ShareOf(square)).ToList();
        // Simplified to 50 m: an edge that runs across the whole square could move 0.5 %; small islands and lagoons add to it.
        Assert.True(apart.Max(Math.Abs) < 0.03, $"{squares[apart.IndexOf(apart.MaxBy(Math.Abs))]} {apart.MaxBy(Math.Abs)}");
        Assert.Equal(0, apart.Average(), 3);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[1,2]")]
    [InlineData("""{"features":[{"geometry":{"type":"Polygon","coordinates":[[[0,1],[1,1],[0,1]]]},"properties":{}}]}""")]
    [InlineData("""{"features":[{"geometry":{"type":"Polygon","coordinates":[[[0],[1],[2],[0]]]},"properties":{}}]}""")]
    [InlineData("""{"features":[{"geometry":null,"properties":{}}]}""")]
    public void WhatIsNoPolygonsIsRefused(string text) => Assert.Throws<FormatException>(() => LandArea.Read(new MemoryStream(Encoding.UTF8.GetBytes(text))));

    private static Gen<LatLon> SeaOrLand =>
        from latitude in Gen.Double[49, 61]
        from longitude in Gen.Double[-11, 2]
        select new LatLon(latitude, longitude);

    private static GeoPolygon Box(double south, double west, double north, double east) =>
        new([[new(south, west), new(south, east), new(north, east), new(north, west), new(south, west)]]);

    private static GeoPolygon OnBritish(params (double Easting, double Northing)[][] rings) =>
        new([.. rings.Select(ring => ring.Append(ring[0]).Select(p => British.ToLatLon(new(p.Easting, p.Northing))).ToArray())]);
}
