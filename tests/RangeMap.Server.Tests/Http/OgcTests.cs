using System.Diagnostics;

namespace RangeMap.Server.Tests.Http;

/// <summary>OGC API - Features and Tiles as clients use them.</summary>
public sealed class OgcTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    private readonly RunningServer _server = world.Server;

    [Fact]
    public async Task PagesFollowOneAnotherUntilAllFeaturesWereGivenOnce()
    {
        var ids = new List<string>();
        var address = "/ogc/collections/presence/items?taxonID=prima&limit=2";
        var matched = 0;
        while (address is not null)
        {
            var page = await _server.GetJsonAsync(address);
            var features = page["features"]!.AsArray();
            Assert.Equal(features.Count, page.Int("numberReturned"));
            matched = page.Int("numberMatched");
            ids.AddRange(features.Select(feature => feature!.Text("id")));
            address = page["links"]!.AsArray().FirstOrDefault(link => link!.Text("rel") == "next")?.Text("href");
        }

        Assert.Equal(5, ids.Count);
        Assert.Equal(ids.Count, matched);
        Assert.Equal(ids.Count, ids.Distinct().Count());
    }

    [Theory]
    [InlineData("taxonID=prima&year=2012", 1)]
    [InlineData("taxonID=prima&square=NZ26", 2)]
    [InlineData("taxonID=prima&datetime=2012-01-01/2013-12-31", 2)]
    [InlineData("taxonID=prima&datetime=../2000-01-01T00:00:00Z", 1)]
    [InlineData("taxonID=prima&bbox=-3,54,-1,56", 2)]
    [InlineData("taxonID=prima&bbox=-3,54,0,-1,56,100", 2)]
    [InlineData("taxonID=prima&bbox=170,50,-170,60", 0)]
    [InlineData("taxonID=nobody", 0)]
    [InlineData("taxonID=prima&limit=1000000000", 5)]
    [InlineData("taxonID=prima&limit=99999999999999999999", 5)]
    public async Task FiltersChooseFeatures(string question, int count) =>
        Assert.Equal(count, (await _server.GetJsonAsync($"/ogc/collections/presence/items?{question}"))["features"]!.AsArray().Count);

    [Fact]
    public async Task EveryFeatureIsFoundByItsName()
    {
        foreach (var collection in (await _server.GetJsonAsync("/ogc/collections"))["collections"]!.AsArray().Select(collection => collection!.Text("id")).Where(id => id != "fronts"))
        {
            var features = (await _server.GetJsonAsync($"/ogc/collections/{collection}/items?limit=3"))["features"]!.AsArray();
            Assert.NotEmpty(features);
            foreach (var id in features.Select(feature => feature!.Text("id")))
                Assert.Equal(id, (await _server.GetJsonAsync($"/ogc/collections/{collection}/items/{Uri.EscapeDataString(id)}")).Text("id"));
        }
    }

    [Fact]
    public async Task WhereNoSpeciesSpreadsThereAreNoFronts()
    {
        var page = await _server.GetJsonAsync("/ogc/collections/fronts/items?datetime=1990-01-01/..");
        Assert.Equal(0, page.Int("numberReturned"));
        Assert.Contains("year", (await _server.GetJsonAsync("/ogc/collections/fronts/queryables"))["properties"]!.Names());
    }

    [Fact]
    public async Task DocumentsComeAsPagesTooAndTextIsEscaped()
    {
        foreach (var path in (string[])["", "conformance", "collections", "collections/presence", "collections/presence/items", "collections/presence/tiles", "collections/presence/tiles/WebMercatorQuad"])
            Assert.StartsWith("<!doctype html>", await _server.GetAsync($"/ogc/{path}?f=html"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task EveryLinkOfTheLandingPageAnswersWithTheTypeItSays()
    {
        foreach (var link in (await _server.GetJsonAsync("/ogc/"))["links"]!.AsArray())
        {
            using var answer = await _server.Client.GetAsync(link!.Text("href"));
            Assert.True(answer.IsSuccessStatusCode, link!.Text("href"));
            Assert.Equal(link!.Text("type").Split(';')[0], answer.Content.Headers.ContentType!.MediaType);
        }
    }

    [Fact]
    public async Task AnIndependentReaderFindsTheCollections()
    {
        if (!OnPath("ogrinfo"))
            Assert.Skip("ogrinfo (GDAL) is not installed.");
        var said = await RunAsync("ogrinfo", "-ro", "-so", $"OAPIF:{_server.Client.BaseAddress}ogc/", "squares");
        Assert.Contains("Geometry: Polygon", said, StringComparison.Ordinal);
        Assert.Contains("Feature Count: 4", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnIndependentReaderFindsTheSquaresOfATile()
    {
        if (!OnPath("ogrinfo"))
            Assert.Skip("ogrinfo (GDAL) is not installed.");
        var path = Path.Combine(Directory.CreateTempSubdirectory("rangemap-tile-").FullName, "0.mvt");
        await File.WriteAllBytesAsync(path, await _server.Client.GetByteArrayAsync("/api/v1/taxa/prima/tiles/BritishNationalGrid/0/0/0?periods=../1999,2000/.."));
        var said = await RunAsync("ogrinfo", "-ro", "-al", path);
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        Assert.Contains("Layer name: presence", said, StringComparison.Ordinal);
        Assert.Contains("square (String) = NZ26", said, StringComparison.Ordinal);
        Assert.Contains("latest (Integer", said, StringComparison.Ordinal);
    }

    private static bool OnPath(string program) => Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));

    private static async Task<string> RunAsync(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var said = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return said;
    }
}
