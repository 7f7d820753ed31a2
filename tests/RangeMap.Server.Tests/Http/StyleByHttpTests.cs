using System.Text.Json.Nodes;

namespace RangeMap.Server.Tests.Http;

/// <summary>Styles and legends over HTTP.</summary>
public sealed class StyleByHttpTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    private readonly RunningServer _server = world.Server;

    [Fact]
    public async Task AStylePointsToTilesThatHaveItsPropertyAndLayer()
    {
        var style = await _server.GetJsonAsync("/api/v1/taxa/prima/style.json?periods=../1999,2000/..&grid=5km");
        Assert.Equal(8, style.Int("version"));
        var tileJson = await _server.GetJsonAsync(new Uri(style["sources"]!["squares"]!.Text("url")).PathAndQuery);
        var layer = tileJson["vector_layers"]![0]!;
        var fill = style["layers"]![0]!;
        Assert.Equal(layer.Text("id"), fill.Text("source-layer"));
        var step = fill["paint"]!["fill-color"]!.AsArray();
        Assert.Equal(("step", "latest"), ((string)step[0]!, (string)step[1]![1]!));
        Assert.Contains("latest", layer["fields"]!.Names());
        // Three colours would be one too many for two periods; the tiles are those of the same question.
        Assert.Equal(5, step.Count);
        Assert.Contains("p1", layer["fields"]!.Names());
        Assert.Contains("grid=5km", (string)tileJson["tiles"]![0]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheLegendOfAStyleIsTheLegendOnItsOwn()
    {
        foreach (var (kind, style) in ((string, string)[])[("presence", "style.json?periods=../1999,2000/.."), ("arrivals", "style.json?kind=arrivals")])
        {
            var own = await _server.GetJsonAsync($"/api/v1/legends/{kind}?taxon=prima&periods={(kind == "presence" ? "../1999,2000/.." : "")}");
            var inStyle = (await _server.GetJsonAsync($"/api/v1/taxa/prima/{style}"))["metadata"]!["rangemap:legend"]!;
            Assert.True(JsonNode.DeepEquals(own, inStyle), kind);
            Assert.NotEmpty(own["classes"]!.AsArray());
        }

        Assert.Equal(["gained", "lost", "kept", "not-surveyed-before", "not-surveyed-after"], (await _server.GetJsonAsync("/api/v1/legends/change"))["classes"]!.AsArray().Select(part => part!.Text("value")));
    }

    [Fact]
    public async Task ATaxonWithoutRecordsHasAStyleToo() => Assert.Equal(8, (await _server.GetJsonAsync("/api/v1/taxa/secreta/style.json?kind=arrivals&paper=dark")).Int("version"));
}
