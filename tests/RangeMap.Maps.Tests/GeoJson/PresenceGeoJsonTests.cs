using System.Text.Json;
using CsCheck;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using RangeMap.Grids;

namespace RangeMap.Maps.Tests;

public class PresenceGeoJsonTests
{
    private static readonly MapCaption Caption = new("Inventa exempli", "e-7");
    private static readonly Square Corner = new(GridId.British, SquareSize.Km10, 400_000, 300_000);

    [Fact]
    public async Task ADrawingOfSevenByFiveGivesItsGoldenDocument()
    {
        var map = Drawing.Of(
            Corner,
            ".......",
            "..b....",
            ".a#b...",
            "..a....",
            ".......");
        var text = await Written.TextAsync(stream => PresenceGeoJson.WriteAsync(stream, map, Caption));
        Golden.Compare("drawing-7x5.geojson", text);
    }

    [Fact]
    public async Task TheOutlineOfASquareStandsWhereItsCornersAre()
    {
        var document = await DocumentAsync(Drawing.Of(Corner, "#"));
        var ring = Ring(Assert.Single(document.RootElement.GetProperty("features").EnumerateArray()));
        var first = NationalGrid.Get(GridId.British).FromLatLon(new(ring[0].Y, ring[0].X));
        Assert.Equal(400_000, first.Easting, 0.1);
        Assert.Equal(300_000, first.Northing, 0.1);
    }

    [Fact]
    public async Task AMapWithoutSquaresIsAnEmptyCollectionThatStillSaysWhatWasLeftOut()
    {
        var root = (await DocumentAsync(Drawing.Of(Corner, "."))).RootElement;
        Assert.Empty(root.GetProperty("features").EnumerateArray());
        Assert.Equal("""{"tooCoarse":1,"betweenPeriods":2,"belowQuality":3}""", root.GetProperty("omitted").GetRawText());
        Assert.Equal("e-7", root.GetProperty("edition").GetString());
    }

    [Fact]
    public void EveryRingIsClosedValidAndAnticlockwise() =>
        SomeMaps.Any.SampleAsync(async map =>
        {
            var document = await DocumentAsync(map);
            Assert.Equal("FeatureCollection", document.RootElement.GetProperty("type").GetString());
            var features = document.RootElement.GetProperty("features").EnumerateArray().ToArray();
            Assert.Equal(map.Squares.Select(square => square.Square.ToString()), features.Select(feature => feature.GetProperty("id").GetString()));
            foreach (var ring in features.Select(Ring))
            {
                Assert.Equal(ring[0], ring[^1]);
                Assert.True(Orientation.IsCCW(ring));
                Assert.True(new GeometryFactory().CreatePolygon(ring).IsValid);
                Assert.All(ring, point => Assert.True(point.X is > -12 and < 4 && point.Y is > 48 and < 62));
            }
        }, iter: 30, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void TheSameMapAndEditionGiveTheSameBytes() =>
        SomeMaps.Any.SampleAsync(async map =>
            Assert.Equal(
                await Written.BytesAsync(stream => PresenceGeoJson.WriteAsync(stream, map, Caption)),
                await Written.BytesAsync(stream => PresenceGeoJson.WriteAsync(stream, map with { Squares = [.. map.Squares] }, Caption))),
            iter: 20, seed: "0N0XIzNsQ0O2");

    [Fact]
    public async Task ArrivalsCarryTheYearOfEachSquare()
    {
        var text = await Written.TextAsync(stream => ArrivalsGeoJson.WriteAsync(stream, SquareSize.Km10, [new(Corner, 2004)], Caption));
        var feature = Assert.Single(JsonDocument.Parse(text).RootElement.GetProperty("features").EnumerateArray());
        Assert.Equal("""{"square":"SK00","grid":"GB","year":2004}""", feature.GetProperty("properties").GetRawText());
    }

    private static async Task<JsonDocument> DocumentAsync(RangeMap.Presence.PresenceMap map) =>
        JsonDocument.Parse(await Written.BytesAsync(stream => PresenceGeoJson.WriteAsync(stream, map, Caption)));

    private static Coordinate[] Ring(JsonElement feature)
    {
        var geometry = feature.GetProperty("geometry");
        Assert.Equal("Polygon", geometry.GetProperty("type").GetString());
        var ring = Assert.Single(geometry.GetProperty("coordinates").EnumerateArray());
        return [.. ring.EnumerateArray().Select(point => new Coordinate(point[0].GetDouble(), point[1].GetDouble()))];
    }
}
