using System.Net;
using System.Net.Http.Headers;

namespace RangeMap.Server.Tests.Http;

/// <summary>Exports over HTTP: size beforehand, whole and in parts, under safe names.</summary>
public sealed class ExportByHttpTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    private readonly RunningServer _server = world.Server;

    [Fact]
    public async Task TheSizeIsToldBeforehand()
    {
        var size = await _server.GetJsonAsync("/api/v1/exports/presence?taxon=prima&count=true");
        Assert.Equal(5, size.Int("rows"));
        Assert.InRange(size.Int("bytes"), 100, 10_000);
        Assert.Equal(7, (await _server.GetJsonAsync("/api/v1/exports/records?quality=all&count=true")).Int("rows"));
    }

    [Fact]
    public async Task ABrokenDownloadGoesOnWhereItStopped()
    {
        const string Address = "/api/v1/exports/presence?taxon=prima&format=csv";
        using var whole = await _server.Client.GetAsync(Address);
        var bytes = await whole.Content.ReadAsByteArrayAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, Address);
        request.Headers.Range = new RangeHeaderValue(50, null);
        request.Headers.IfRange = new(whole.Headers.ETag!);
        using var rest = await _server.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.PartialContent, rest.StatusCode);
        Assert.Equal(bytes[50..], await rest.Content.ReadAsByteArrayAsync());
        Assert.Equal("presence-prima-10km-live-2.csv", whole.Content.Headers.ContentDisposition!.FileName);
        Assert.False(whole.Headers.ETag!.IsWeak);
    }

    [Fact]
    public async Task ABoxAcrossTheAntimeridianHoldsNothingOfTheseIslands()
    {
        var lines = (await _server.GetAsync("/api/v1/exports/presence?bbox=170,50,-170,60")).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Single(lines);
        Assert.Equal(6, (await _server.GetAsync("/api/v1/exports/presence?taxon=prima&bbox=-180,-90,180,90")).Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public async Task ThePublicGetsRecordsWithoutPeople()
    {
        Assert.DoesNotContain("Invented,", await _server.GetAsync("/api/v1/exports/records?quality=all"), StringComparison.Ordinal);
        using var reviewer = await _server.ClientOfAsync("Reviewer", "review");
        Assert.Contains("A. Invented", await reviewer.GetStringAsync("/api/v1/exports/records?quality=all"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task NoCellBecomesAFormulaAndNoNameOfAFileLeadsElsewhere()
    {
        await using var server = await RunningServer.StartAsync("occurrenceID,scientificName,eventDate,gridReference,recordedBy\n"
            + string.Concat(((string[])["=SUM(A1)", "+A1", "-A1", "@name"]).Select((name, i) => $"f{i},Inventa prima,2005-06-01,NZ2563,{name}\n")));
        using var reviewer = await server.ClientOfAsync("Reviewer", "review");
        var lines = await reviewer.GetStringAsync("/api/v1/exports/records?quality=all");
        Assert.All(["=SUM(A1)", "+A1", "-A1", "@name"], (string name) => Assert.Contains($",'{name},", lines, StringComparison.Ordinal));
        foreach (var address in (string[])["exports/presence?taxon=Inventa%20prima", "exports/tiles?taxon=prima,secunda", "exports/records?format=dwca", "taxa/prima/presence?format=gpkg"])
        {
            using var answer = await server.Client.GetAsync($"/api/v1/{address}");
            Assert.Matches("^[A-Za-z0-9.-]+$", answer.Content.Headers.ContentDisposition!.FileName!);
        }
    }

    [Fact]
    public async Task PresenceMapsComeAsGeoPackageAndParquet()
    {
        Assert.Equal("SQLite format 3\0"u8.ToArray(), (await _server.Client.GetByteArrayAsync("/api/v1/taxa/prima/presence?format=gpkg"))[..16]);
        Assert.Equal("PAR1"u8.ToArray(), (await _server.Client.GetByteArrayAsync("/api/v1/taxa/prima/presence?format=parquet"))[..4]);
    }
}
