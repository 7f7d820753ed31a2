using System.Text.Json.Nodes;

namespace RangeMap.Server.Tests.Http;

/// <summary>What every route answers when asked well.</summary>
public sealed class GoodAnswerTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    private readonly RunningServer _server = world.Server;

    [Theory]
    [InlineData("/", "RangeMap")]
    [InlineData("/health/live", "live")]
    [InlineData("/health/ready", "\"ready\":true")]
    [InlineData("/reference", "openapi")]
    [InlineData("/api/v1/about", "\"edition\":2")]
    [InlineData("/api/v1/taxa?q=first", "Inventa prima")]
    [InlineData("/api/v1/taxa/prima", "\"aggregate\":\"gemella-agg\"")]
    [InlineData("/api/v1/taxa/Inventa%20prima", "\"id\":\"prima\"")]
    [InlineData("/api/v1/taxa/inventa%20PRIMA", "\"id\":\"prima\"")]
    [InlineData("/api/v1/taxa/Inventa%20gemella%20agg.", "\"members\":[\"prima\",\"secunda\"]")]
    [InlineData("/api/v1/taxa/prima/presence", "FeatureCollection")]
    [InlineData("/api/v1/taxa/prima/presence?format=csv", "square,grid,size,period,records")]
    [InlineData("/api/v1/taxa/prima/arrivals?grid=1km", "\"year\":1995")]
    [InlineData("/api/v1/taxa/prima/spread", "not enough squares")]
    [InlineData("/api/v1/taxa/prima/forecast", "\"refused\":\"Not enough squares")]
    [InlineData("/api/v1/taxa/prima/forecast?format=geojson", "\"refused\":\"Not enough squares")]
    [InlineData("/api/v1/taxa/prima/fronts", "\"refused\":\"Not enough squares")]
    [InlineData("/api/v1/taxa/prima/arrivals?model=true", "\"refused\":\"Not enough squares")]
    [InlineData("/api/v1/taxa/prima/tiles.json", "\"tilejson\":\"3.0.0\"")]
    [InlineData("/api/v1/squares/NZ26", "\"visits\":3")]
    [InlineData("/api/v1/squares/nz%2025%2063", "\"square\":\"NZ2563\"")]
    [InlineData("/api/v1/places?q=NZ2563", "NZ2563")]
    [InlineData("/api/v1/places?q=", "\"places\":[]")]
    [InlineData("/ogc/tileMatrixSets", "BritishNationalGrid")]
    [InlineData("/ogc/tileMatrixSets/WebMercatorQuad", "tileMatrices")]
    public async Task ARouteAnswers(string address, string words) => Assert.Contains(words, await _server.GetAsync(address), StringComparison.Ordinal);

    [Theory]
    [InlineData("../1999,2000/2009,2010/..")]
    [InlineData("..%2F1999%2C2000%2F2009%2C2010%2F..")]
    [InlineData("../1999%2C%202000/2009%2C%202010/..")]
    public async Task PeriodsMayBeEncodedOrNot(string periods)
    {
        var map = await _server.GetJsonAsync($"/api/v1/taxa/prima/presence?periods={periods}");
        Assert.Equal(["../1999", "2000/2009", "2010/.."], map["periods"]!.AsArray().Select(period => (string)period!));
    }

    [Theory]
    [InlineData("10km", "usable")]
    [InlineData("1km", "all")]
    [InlineData("100m", "confirmed")]
    public async Task TheMapIsTheSameOverHttpAndOnTheCommandLine(string grid, string quality)
    {
        const string periods = "../1999,2000/2009,2010/..";
        foreach (var taxon in (string[])["prima", "gemella-agg", "tertia"])
        {
            var run = await _server.Data.RunAsync("presence", taxon, "--grid", grid, "--periods", periods, "--quality", quality);
            Assert.Equal(run.Out, await _server.GetAsync($"/api/v1/taxa/{taxon}/presence?grid={grid}&quality={quality}&periods={periods}&format=csv"));
            var geo = await _server.Data.RunAsync("presence", taxon, "--grid", grid, "--periods", periods, "--quality", quality, "--format", "geojson");
            Assert.Equal(geo.Out, await _server.GetAsync($"/api/v1/taxa/{taxon}/presence?grid={grid}&quality={quality}&periods={periods}"));
        }
    }

    [Theory]
    [InlineData("region=England", "SU13,NZ26")]
    [InlineData("region=northern%20ireland", "J37")]
    [InlineData("region=England&bbox=-2,54,0,56", "NZ26")]
    [InlineData("bbox=-3,48,-1,52", "SU13,WV64")]
    [InlineData("bbox=170,50,-170,60", "")]
    public async Task AMapOfARegionOrBoxHasItsSquaresAndSaysSo(string place, string squares)
    {
        var map = await _server.GetJsonAsync($"/api/v1/taxa/prima/presence?{place}");
        Assert.Equal(squares.Split(',', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal), map["features"]!.AsArray().Select(feature => feature!.Text("id")).Order(StringComparer.Ordinal));
        Assert.True(map["region"] is not null || map["within"] is not null);
    }

    [Fact]
    public async Task RecordsLeftOutOfAMapOfARegionAreCountedInTheRegionOnly()
    {
        // NZ256634 supports 100 m; NZ2563 1 km. Both lie in England, and so does SU1234; J3374 in Northern Ireland does not, nor WV6548.
        var map = await _server.GetJsonAsync("/api/v1/taxa/prima/presence?grid=100m&region=England");
        Assert.Equal(2, map["omitted"]!.Int("tooCoarse"));
        Assert.Equal(4, (await _server.GetJsonAsync("/api/v1/taxa/prima/presence?grid=100m"))["omitted"]!.Int("tooCoarse"));
    }

    [Fact]
    public async Task AMapOfARegionIsTheSameOverHttpAndOnTheCommandLine()
    {
        var run = await _server.Data.RunAsync("presence", "prima", "--region", "England", "--bbox=-2,54,0,56", "--format", "geojson");
        Assert.Equal(run.Out, await _server.GetAsync("/api/v1/taxa/prima/presence?region=England&bbox=-2,54,0,56"));
    }

    [Fact]
    public async Task TheSpreadIsTheSameOverHttpAndOnTheCommandLine()
    {
        var run = await _server.Data.RunAsync("spread", "prima", "--json");
        Assert.True(JsonNode.DeepEquals(run.Json, await _server.GetJsonAsync("/api/v1/taxa/prima/spread")));
    }

    [Theory]
    [InlineData("presence?grid=10km", 4)]
    [InlineData("presence?grid=1km&quality=all", 4)]
    [InlineData("arrivals?grid=10km", 4)]
    public async Task GeoJsonHasClosedRingsInsideTheIslands(string what, int features)
    {
        // RFC 7946: type, features, each with geometry and properties; a ring has four or more positions, the last the first (3.1.6).
        var map = await _server.GetJsonAsync($"/api/v1/taxa/prima/{what}");
        Assert.Equal("FeatureCollection", map.Text("type"));
        Assert.Equal(features, map["features"]!.AsArray().Count);
        foreach (var feature in map["features"]!.AsArray())
        {
            Assert.Equal(("Feature", "Polygon"), (feature!.Text("type"), feature!["geometry"]!.Text("type")));
            var ring = feature["geometry"]!["coordinates"]![0]!.AsArray().Select(position => ((double)position![0]!, (double)position[1]!)).ToList();
            Assert.True(ring.Count >= 4);
            Assert.Equal(ring[0], ring[^1]);
            Assert.All(ring, position => Assert.True(position is { Item1: > -11 and < 2.5, Item2: > 48.5 and < 61.5 }));
            // Counter-clockwise (3.1.6): twice the area by the shoelace rule is positive.
            Assert.True(ring.Zip(ring.Skip(1), (a, b) => a.Item1 * b.Item2 - b.Item1 * a.Item2).Sum() > 0);
        }
    }

    [Fact]
    public async Task TilesHoldTheSquaresOrNothing()
    {
        // WebMercatorQuad level 0 is the whole world; tile 6/0/0 lies in the Arctic, far from every record.
        var whole = await _server.Client.GetAsync("/api/v1/taxa/prima/tiles/WebMercatorQuad/0/0/0");
        Assert.Equal("application/vnd.mapbox-vector-tile", whole.Content.Headers.ContentType?.MediaType);
        Assert.Contains("presence", System.Text.Encoding.Latin1.GetString(await whole.Content.ReadAsByteArrayAsync()), StringComparison.Ordinal);
        var empty = await _server.Client.GetAsync("/api/v1/taxa/prima/tiles/WebMercatorQuad/6/0/0");
        Assert.Equal(System.Net.HttpStatusCode.OK, empty.StatusCode);
        Assert.Empty(await empty.Content.ReadAsByteArrayAsync());
        var british = await _server.Client.GetByteArrayAsync("/api/v1/taxa/prima/tiles/BritishNationalGrid/0/0/0");
        foreach (var square in (string[])["NZ26", "SU13", "J37", "WV64"])
            Assert.Contains(square, System.Text.Encoding.Latin1.GetString(british), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TileJsonHasWhatItMustHave()
    {
        // TileJSON 3.0.0: tilejson (3.1), tiles (3.2) and vector_layers with id and fields (3.3) are required.
        var json = await _server.GetJsonAsync("/api/v1/taxa/prima/tiles.json?grid=1km&periods=../1999,2000/..");
        Assert.Equal("3.0.0", json.Text("tilejson"));
        var layer = json["vector_layers"]!.AsArray().Single()!;
        Assert.Equal("presence", layer.Text("id"));
        Assert.NotEmpty(layer["fields"]!.Names());
        var template = (string)json["tiles"]![0]!;
        var tile = template.Replace("{z}", "0", StringComparison.Ordinal).Replace("{x}", "0", StringComparison.Ordinal).Replace("{y}", "0", StringComparison.Ordinal);
        Assert.StartsWith(_server.Client.BaseAddress!.ToString(), tile, StringComparison.Ordinal);
        Assert.NotEmpty(await _server.Client.GetByteArrayAsync(tile));
    }

    [Fact]
    public async Task ASquareTellsItsTaxaAndWhatSupportsOne()
    {
        var square = await _server.GetJsonAsync("/api/v1/squares/NZ26?taxon=prima&periods=../1999,2000/..");
        // w1, w2, w6, w7 and, at the aggregate, w1, w2, w6 once more.
        Assert.Equal(["gemella-agg", "prima", "secunda", "tertia"], square["taxa"]!.AsArray().Select(taxon => taxon!.Text("id")));
        var support = square["supports"]!;
        Assert.Equal([1, 1], support["perPeriod"]!.AsArray().Select(period => period!.Int("records")));
        Assert.Equal(["NZ2563", "NZ256634"], support["finerSquares"]!.AsArray().Select(finer => finer!.Text("square")).Order(StringComparer.Ordinal));
        Assert.Equal(8, square["neighbours"]!.AsArray().Count);
    }

    [Fact]
    public async Task AnyPageMayReadTheDataAndNoneMayFrameTheViewer()
    {
        using var data = await _server.Client.GetAsync("/api/v1/about");
        Assert.Equal("*", data.Headers.GetValues("Access-Control-Allow-Origin").Single());
        using var viewer = await _server.Client.GetAsync("/");
        Assert.Contains("frame-ancestors 'none'", viewer.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.False(viewer.Headers.Contains("Server"));
    }
}
