using System.Net;
using System.Xml.Linq;

namespace RangeMap.Server.Tests.Http;

/// <summary>Printed maps over HTTP and by the command.</summary>
public sealed class PrintByHttpTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    private readonly RunningServer _server = world.Server;

    [Theory]
    [InlineData("svg", "image/svg+xml")]
    [InlineData("png", "image/png")]
    [InlineData("pdf", "application/pdf")]
    public async Task AMapIsAFileWithATypeANameAndATag(string format, string type)
    {
        using var answer = await _server.Client.GetAsync($"/api/v1/taxa/prima/map.{format}?size=column");
        Assert.Equal((HttpStatusCode.OK, type), (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType));
        Assert.Equal(("attachment", $"prima-presence.{format}"), (answer.Content.Headers.ContentDisposition?.DispositionType, answer.Content.Headers.ContentDisposition?.FileName));
        using var again = new HttpRequestMessage(HttpMethod.Get, $"/api/v1/taxa/prima/map.{format}?size=column") { Headers = { IfNoneMatch = { answer.Headers.ETag! } } };
        using var unchanged = await _server.Client.SendAsync(again);
        Assert.Equal(HttpStatusCode.NotModified, unchanged.StatusCode);
    }

    [Theory]
    [InlineData("svg", "presence", "periods=../1999,2000/..")]
    [InlineData("pdf", "change", "from=1990/1999&to=2000/2019")]
    [InlineData("png", "arrivals", "region=England&ink=black")]
    public async Task TheMapIsTheSameOverHttpAndOnTheCommandLine(string format, string kind, string options)
    {
        using var folder = new TestKit.TemporaryFolder();
        var file = folder.File($"map.{format}");
        string[] said = [.. options.Split('&').Select(option => option.Split('=')).SelectMany(option => (string[])["--" + option[0], option[1]])];
        var run = await _server.Data.RunAsync(["map", "prima", "-o", file, "--kind", kind, "--json", .. said]);
        Assert.Equal(0, run.Exit);
        Assert.Equal(await File.ReadAllBytesAsync(file), await _server.Client.GetByteArrayAsync($"/api/v1/taxa/prima/map.{format}?kind={kind}&{options}"));
        Assert.Equal(new FileInfo(file).Length, run.Json.Int("bytes"));
    }

    [Fact]
    public async Task TheSourceTellsRecordsSquaresEditionDateQualityAndCredits()
    {
        var words = string.Join(' ', (await SvgAsync("prima/map.svg?periods=../1999,2000/..")).Descendants().Where(element => element.Name.LocalName == "text").Select(text => text.Value));
        // w1 to w5 lie in NZ26 (twice), SU13, J37 and WV64.
        foreach (var told in (string[])["5 records in 4 squares", "usable records", "edition 2 of", "2026", "OpenStreetMap contributors", "Natural Earth", "before 2000", "since 2000", "Squares of 10 km", "Data sets:"])
            Assert.Contains(told, words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "J37 NZ26 SU13 WV64")]
    [InlineData("&region=england", "NZ26 SU13")]
    [InlineData("&region=Northern%20Ireland", "J37")]
    [InlineData("&region=Jersey", "WV64")]
    [InlineData("&region=Wales", "")]
    public async Task ARegionShowsTheSquaresThatItReachesInto(string region, string squares)
    {
        var svg = await SvgAsync($"prima/map.svg?size=column{region}");
        Assert.Equal(squares, string.Join(' ', svg.Descendants().Where(element => element.Parent?.Name.LocalName == "path").Select(tip => tip.Value).Order(StringComparer.Ordinal)));
    }

    [Fact]
    public async Task AChangeMapTellsGainsFromSquaresThatNobodyVisitedBefore()
    {
        var svg = await SvgAsync("prima/map.svg?kind=change&from=1990/1999&to=2000/2019");
        var words = svg.Descendants().Where(element => element.Name.LocalName == "text").Select(text => text.Value).ToList();
        // NZ26 was found in both; nobody visited the other three before.
        Assert.Contains("4 squares", string.Join(' ', words), StringComparison.Ordinal);
        Assert.Equal("3", words[words.FindIndex(word => word.EndsWith("visited before", StringComparison.Ordinal)) + 1]);
    }

    [Fact]
    public async Task WhereNoFrontCanBeFittedTheMapSaysWhy()
    {
        var svg = await SvgAsync("prima/map.svg?kind=arrivals");
        Assert.Contains("No front is drawn: Not enough squares", svg.Elements().First(element => element.Name.LocalName == "desc").Value, StringComparison.Ordinal);
        Assert.DoesNotContain(svg.Descendants(), element => (string?)element.Attribute("id") == "front");
    }

    [Theory]
    [InlineData("map.gif", ".svg, .png or .pdf")]
    [InlineData("map", ".svg, .png or .pdf")]
    public async Task TheCommandRefusesAFormatThatItDoesNotKnow(string file, string words) => (await _server.Data.RunAsync("map", "prima", "-o", file)).Failed(2, words);

    private async Task<XElement> SvgAsync(string address) => XDocument.Parse(await _server.GetAsync($"/api/v1/taxa/{address}")).Root!;
}
