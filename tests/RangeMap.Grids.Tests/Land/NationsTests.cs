using NetTopologySuite.Geometries;

namespace RangeMap.Grids.Tests;

/// <summary>Positions from memory to about 0.02 degree, not verified; none within 2 km of a border but those said.</summary>
public sealed class NationsTests
{
    private static readonly Lazy<NamedAreas> Read = new(() =>
    {
        using var stream = RealLand.Open("nations.geojson");
        return NamedAreas.Read(stream, "nation");
    });

    [Theory]
    [InlineData("England", 51.50, -0.12)] // London
    [InlineData("England", 55.77, -2.01)] // Berwick, 4 km from the border
    [InlineData("England", 54.90, -2.94)] // Carlisle
    [InlineData("England", 49.91, -6.31)] // Scilly
    [InlineData("England", 51.18, -4.67)] // Lundy
    [InlineData("England", 52.71, -2.75)] // Shrewsbury
    [InlineData("Scotland", 55.95, -3.19)] // Edinburgh
    [InlineData("Scotland", 54.64, -4.87)] // Mull of Galloway
    [InlineData("Scotland", 57.81, -8.57)] // St Kilda
    [InlineData("Scotland", 60.80, -0.85)] // Unst
    [InlineData("Wales", 51.48, -3.18)] // Cardiff
    [InlineData("Wales", 51.376, -3.12)] // Flat Holm
    [InlineData("Wales", 53.25, -4.55)] // Holy Island
    [InlineData("Northern Ireland", 54.60, -5.93)] // Belfast
    [InlineData("Northern Ireland", 54.60, -6.42)] // Lough Neagh
    [InlineData("Northern Ireland", 55.30, -6.19)] // Rathlin
    [InlineData("Ireland", 53.35, -6.26)] // Dublin
    [InlineData("Ireland", 55.37, -7.37)] // Malin Head, north of Northern Ireland
    [InlineData("Isle of Man", 54.15, -4.48)] // Douglas
    [InlineData("Jersey", 49.19, -2.11)] // St Helier
    [InlineData("Jersey", 48.97, -2.07)] // the Minquiers
    [InlineData("Guernsey", 49.46, -2.54)] // St Peter Port
    [InlineData("Guernsey", 49.71, -2.20)] // Alderney
    public void APlaceOnLandHasItsNation(string nation, double latitude, double longitude) => Assert.Equal(nation, Read.Value.HoldingOrNearest(new(latitude, longitude)));

    [Fact]
    public void FarAwayThereIsNone() => Assert.Null(Read.Value.HoldingOrNearest(new(-33.87, 151.21)));

    [Theory]
    // Published areas in km2 with fresh water where the nation has much of it: from memory, not verified.
    [InlineData("England", 130_310)]
    [InlineData("Scotland", 78_790)]
    [InlineData("Wales", 20_780)]
    [InlineData("Northern Ireland", 14_130)]
    [InlineData("Ireland", 70_280)]
    [InlineData("Isle of Man", 572)]
    [InlineData("Jersey", 120)]
    [InlineData("Guernsey", 78)]
    public void AreasAreNearThePublishedOnes(string nation, double km2)
    {
        var area = RealLand.Polygons("nations.geojson", "nation").Where(read => read.Property == nation).Sum(read => OnEqualArea(read.Polygon).Area) / 1e6;
        Assert.Equal(km2, area, Math.Max(0.01 * km2, 3));
    }

    [Theory]
    [InlineData("land.geojson", "part")]
    [InlineData("islets.geojson", "part")]
    [InlineData("lakes.geojson", "part")]
    [InlineData("nations.geojson", "nation")]
    public void EveryPolygonIsValid(string file, string property) =>
        Assert.All(RealLand.Polygons(file, property), read => Assert.True(InDegrees(read.Polygon).IsValid, $"{read.Property} {read.Polygon.Rings[0][0]}"));

    [Fact]
    public void TheFileNamesTheNations() =>
        Assert.Equal(["England", "Guernsey", "Ireland", "Isle of Man", "Jersey", "Northern Ireland", "Scotland", "Wales"], Read.Value.Names);

    private static Polygon OnEqualArea(GeoPolygon polygon) => Make(polygon.On(NationalGrid.Get(GridId.European)));

    private static Polygon InDegrees(GeoPolygon polygon) => Make([.. polygon.Rings.Select(ring => Array.ConvertAll(ring, place => new EastNorth(place.Longitude, place.Latitude)))]);

    private static Polygon Make(EastNorth[][] rings)
    {
        var made = Array.ConvertAll(rings, ring => GeometryFactory.Default.CreateLinearRing(Array.ConvertAll(ring, point => new Coordinate(point.Easting, point.Northing))));
        return GeometryFactory.Default.CreatePolygon(made[0], made[1..]);
    }
}
