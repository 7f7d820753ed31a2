using System.Net;
using System.Net.Http.Json;

namespace RangeMap.Server.Tests.Http;

/// <summary>Changes of the taxon list over HTTP.</summary>
public sealed class TaxonChangeByHttpTests : IAsyncLifetime
{
    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference
        a,Inventa tertia,2005-06-01,NZ2563
        b,Inventa tertia,2006-06-01,SU1234
        """;

    private RunningServer _server = null!;
    private HttpClient _reviewer = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await RunningServer.StartAsync(Table);
        _reviewer = await _server.ClientOfAsync("T. Invented", "review");
    }

    public async ValueTask DisposeAsync()
    {
        _reviewer.Dispose();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task AMergeIsMadeToldAndTakenBack()
    {
        var made = await RunningServer.JsonAsync(_reviewer.PostAsJsonAsync("/api/v1/taxon-changes", new { kind = "merge", taxon = "tertia", into = "aperta", reason = "One species." }));
        Assert.Equal(2, made.Int("records"));
        await _server.GetProblemAsync("/api/v1/taxa/tertia", HttpStatusCode.NotFound);
        Assert.Equal(2, (await _server.GetJsonAsync("/api/v1/taxa/aperta/presence"))["features"]!.AsArray().Count);
        var sent = (await _server.GetJsonAsync("/api/v1/records"))["records"]![0]!;
        Assert.Equal(("Inventa aperta", "Inventa tertia"), (sent.Text("scientificName"), sent.Text("sentTaxon")));
        Assert.Equal("T. Invented", (await RunningServer.JsonAsync(_reviewer.GetAsync("/api/v1/taxon-changes")))["changes"]![0]!.Text("by"));

        await RunningServer.JsonAsync(_reviewer.DeleteAsync("/api/v1/taxon-changes/1"));
        Assert.Equal(2, (await _server.GetJsonAsync("/api/v1/taxa/tertia/presence"))["features"]!.AsArray().Count);
        await RunningServer.JsonAsync(_reviewer.DeleteAsync("/api/v1/taxon-changes/1"), HttpStatusCode.Conflict);
    }

    [Fact]
    public async Task ARenameAndASplitAreMade()
    {
        await RunningServer.JsonAsync(_reviewer.PostAsJsonAsync("/api/v1/taxon-changes", new { kind = "rename", taxon = "tertia", name = "Inventa quarta" }));
        Assert.Equal("Inventa quarta", (await _server.GetJsonAsync("/api/v1/taxa/tertia")).Text("scientificName"));
        var split = await RunningServer.JsonAsync(_reviewer.PostAsJsonAsync("/api/v1/taxon-changes", new { kind = "split", taxon = "tertia", rules = new[] { "prima: squares=NZ" } }));
        Assert.Equal(1, split.Int("records"));
    }

    [Theory]
    [InlineData("""{"kind":"melt","taxon":"tertia"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"kind":"rename","taxon":"tertia"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"kind":"split","taxon":"tertia","rules":["prima: colour=red"]}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"kind":"split","taxon":"tertia"}""", HttpStatusCode.Conflict)]
    [InlineData("""{"kind":"merge","taxon":"nulla","into":"tertia"}""", HttpStatusCode.Conflict)]
    public async Task AChangeThatCannotBeMadeIsToldWithTheReason(string body, HttpStatusCode status) =>
        await RunningServer.JsonAsync(_reviewer.PostAsync("/api/v1/taxon-changes", new StringContent(body, System.Text.Encoding.UTF8, "application/json")), status);
}
