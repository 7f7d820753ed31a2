using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;

namespace RangeMap.Server.Tests.Http;

/// <summary>The review of records over HTTP: queue, decisions one by one and in bulk, history, reversal, and what the public sees.</summary>
public sealed class ReviewByHttpTests : IAsyncLifetime
{
    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference,recordedBy,identificationVerificationStatus,locality
        a,Inventa prima,2005-06-01,NZ2563,A. Invented,,Invented Heath
        b,Inventa prima cf.,2006-06-01,NZ2664,A. Invented,,Invented Heath
        c,Inventa secunda?,2007-06-01,NZ2765,B. Invented,,
        d,Inventa secreta,2008-06-01,NZ286677,B. Invented,,Secret Pond
        """;

    private RunningServer _server = null!;
    private HttpClient _reviewer = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await RunningServer.StartAsync(Table);
        _reviewer = await _server.ClientOfAsync("R. Invented", "review");
    }

    public async ValueTask DisposeAsync()
    {
        _reviewer.Dispose();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task TheQueueHoldsTheRecordsWithDoubts()
    {
        var queue = await GetAsync("/api/v1/records?order=weight");
        Assert.Equal(["Inventa prima", "Inventa secunda"], queue["records"]!.AsArray().Select(record => record!.Text("scientificName")).Order(StringComparer.Ordinal));
        Assert.All(queue["records"]!.AsArray(), record => Assert.Equal("nameUncertain", (string?)record!["doubts"]![0]));
        var summary = await GetAsync("/api/v1/reviews/summary");
        Assert.Equal((2, 2), (summary.Int("waiting"), summary["byDoubt"]![0]!.Int("records")));
    }

    [Fact]
    public async Task ARecordIsShownWithItsRowAsItWasSentAndItsDoubts()
    {
        var id = (await FindAsync("b")).Text("id");
        var detail = await GetAsync($"/api/v1/records/{id}");
        Assert.Equal("Inventa prima cf.", detail["sent"]!.Text("scientificName"));
        Assert.Equal("nameUncertain", detail["doubts"]![0]!.Text("code"));
        Assert.NotEmpty(detail["doubts"]![0]!.Text("words"));
        Assert.Equal("A. Invented", detail["record"]!.Text("recorder"));
    }

    [Fact]
    public async Task AConfirmedRecordShowsOnTheMapAtOnceAndLeavesTheQueue()
    {
        Assert.Equal("0", await RecordsOnMapAsync("secunda"));
        var record = await FindAsync("c");
        var detail = await DecideAsync(record, new { status = "confirmed", reason = "Seen the photograph.", version = record.Text("version") });
        Assert.Equal("confirmed", detail["record"]!.Text("status"));
        Assert.Equal(("R. Invented", "Seen the photograph."), (detail["history"]![0]!.Text("by"), detail["history"]![0]!.Text("reason")));
        Assert.Equal("1", await RecordsOnMapAsync("secunda"));
        Assert.Single((await GetAsync("/api/v1/records?order=weight"))["records"]!.AsArray());
    }

    [Fact]
    public async Task OfTwoReviewersWhoSawTheSameTheSecondIsToldThatItChanged()
    {
        var record = await FindAsync("c");
        await DecideAsync(record, new { status = "confirmed", version = record.Text("version") });
        await RunningServer.JsonAsync(_reviewer.PostAsJsonAsync(Reviews(record), new { status = "rejected", reason = "No.", version = record.Text("version") }), HttpStatusCode.Conflict);
    }

    [Fact]
    public async Task EveryDoubtHasACodeAndATitle() =>
        Assert.Contains((await _server.GetJsonAsync("/api/v1/doubts"))["doubts"]!.AsArray(), doubt => doubt!.Text("code") == "nameUncertain" && doubt!.Text("title").Length > 0);

    [Fact]
    public async Task ARejectionNeedsAReasonAndIsTakenBack()
    {
        var record = await FindAsync("a");
        await RunningServer.JsonAsync(_reviewer.PostAsJsonAsync(Reviews(record), new { status = "rejected" }), HttpStatusCode.BadRequest);
        var detail = await DecideAsync(record, new { status = "rejected", reason = "It was a moth." });
        Assert.Equal("0", await RecordsOnMapAsync("prima"));
        var reversed = await RunningServer.JsonAsync(_reviewer.DeleteAsync($"/api/v1/reviews/{detail["history"]![0]!.Int("decision")}?reason=No%20moth."));
        Assert.Equal(1, reversed.Int("changed"));
        Assert.Equal("1", await RecordsOnMapAsync("prima"));
        await RunningServer.JsonAsync(_reviewer.DeleteAsync("/api/v1/reviews/1"), HttpStatusCode.Conflict);
        await RunningServer.JsonAsync(_reviewer.DeleteAsync("/api/v1/reviews/999"), HttpStatusCode.Conflict);
    }

    [Fact]
    public async Task AReidentifiedRecordMovesToTheOtherMapAndKeepsTheNameThatWasSent()
    {
        var detail = await DecideAsync(await FindAsync("a"), new { taxon = "Inventa tertia", status = "confirmed", reason = "The third." });
        Assert.Equal(("Inventa tertia", "Inventa prima"), (detail["record"]!.Text("scientificName"), detail["record"]!.Text("sentTaxon")));
        Assert.Equal(("0", "1"), (await RecordsOnMapAsync("prima"), await RecordsOnMapAsync("tertia")));
    }

    [Fact]
    public async Task ManyRecordsAreDecidedAtOnceAndThoseThatChangedAreTold()
    {
        var records = (await GetAsync("/api/v1/records"))["records"]!.AsArray().Select(record => new { id = record!.Text("id"), version = record!.Text("version") }).ToList();
        records[0] = records[0] with { version = "0" };
        records.Add(new { id = "9-" + new string('0', 32), version = "0" });
        var decided = await RunningServer.JsonAsync(_reviewer.PostAsJsonAsync("/api/v1/reviews", new { records, status = "doubtful", reason = "A label was mixed up." }));
        Assert.Equal((3, 1, 1), (decided.Int("changed"), decided["changedMeanwhile"]!.AsArray().Count, decided["missing"]!.AsArray().Count));
        Assert.Equal(3, (await GetAsync("/api/v1/reviews"))["decisions"]![0]!.Int("records"));
        Assert.Equal(3, (await GetAsync("/api/v1/records?status=doubtful"))["records"]!.AsArray().Count);
    }

    [Fact]
    public async Task ARecordSeenInAnOldVersionIsNotDecided()
    {
        var record = await FindAsync("a");
        var refused = await RunningServer.JsonAsync(_reviewer.PostAsJsonAsync(Reviews(record), new { status = "confirmed", version = "00000000000000ff" }), HttpStatusCode.Conflict);
        Assert.Contains("changed", refused.Text("detail"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task ThePublicSeesRecordsWithoutPeopleDoubtsAndSensitiveSpecies()
    {
        var open = (await _server.GetJsonAsync("/api/v1/records"))["records"]!.AsArray();
        Assert.Equal(3, open.Count);
        Assert.All(open, record => Assert.True(record!["recorder"] is null && record["site"] is null && record["doubts"]!.AsArray().Count == 0 && record.Int("weight") == 0));
        var detail = await _server.GetJsonAsync($"/api/v1/records/{open[0]!.Text("id")}");
        Assert.True(detail["sent"]!.AsObject().Count == 0 && detail["doubts"]!.AsArray().Count == 0 && detail["history"]!.AsArray().Count == 0);
        var secret = await FindAsync("d");
        await _server.GetProblemAsync($"/api/v1/records/{secret.Text("id")}", HttpStatusCode.NotFound);
        Assert.Empty((await _server.GetJsonAsync("/api/v1/records?taxon=secreta"))["records"]!.AsArray());
        await _server.GetProblemAsync("/api/v1/records?order=weight", HttpStatusCode.Unauthorized);
        await _server.GetProblemAsync("/api/v1/records?recorder=A.%20Invented", HttpStatusCode.Unauthorized);
        await _server.GetProblemAsync("/api/v1/reviews", HttpStatusCode.Unauthorized);
    }

    [Fact]
    public async Task AnImporterWithoutTheRightToReviewSeesWhatThePublicSees()
    {
        using var importer = await _server.ClientOfAsync("I. Invented", "import");
        Assert.Equal(3, (await RunningServer.JsonAsync(importer.GetAsync("/api/v1/records")))["records"]!.AsArray().Count);
        await RunningServer.JsonAsync(importer.PostAsJsonAsync(Reviews(await FindAsync("a")), new { status = "confirmed" }), HttpStatusCode.Forbidden);
    }

    [Theory]
    [InlineData("status=maybe")]
    [InlineData("doubt=someDoubt")]
    [InlineData("from=last%20week")]
    [InlineData("order=size")]
    [InlineData("after=x")]
    [InlineData("square=nowhere")]
    public async Task AQuestionThatIsNotUnderstoodIsAnsweredWithTheReason(string query) =>
        await RunningServer.JsonAsync(_reviewer.GetAsync($"/api/v1/records?{query}"), HttpStatusCode.BadRequest);

    [Theory]
    [InlineData("{}")]
    [InlineData("{\"status\":\"perhaps\"}")]
    [InlineData("{\"status\":\"confirmed\",\"version\":\"zz\"}")]
    [InlineData("[]")]
    [InlineData("not json")]
    public async Task ADecisionThatIsNotUnderstoodDecidesNothing(string body)
    {
        var record = await FindAsync("a");
        await RunningServer.JsonAsync(_reviewer.PostAsync(Reviews(record), new StringContent(body, System.Text.Encoding.UTF8, "application/json")), HttpStatusCode.BadRequest);
        Assert.Empty((await GetAsync("/api/v1/reviews"))["decisions"]!.AsArray());
    }

    private async Task<JsonNode> FindAsync(string occurrence)
    {
        foreach (var record in (await GetAsync("/api/v1/records"))["records"]!.AsArray())
        {
            if ((await GetAsync($"/api/v1/records/{record!.Text("id")}"))["sent"]!.Text("occurrenceID") == occurrence)
                return record!;
        }

        throw new InvalidOperationException($"There is no record {occurrence}.");
    }

    private Task<JsonNode> GetAsync(string address) => RunningServer.JsonAsync(_reviewer.GetAsync(address));

    private Task<JsonNode> DecideAsync(JsonNode record, object decision) => RunningServer.JsonAsync(_reviewer.PostAsJsonAsync(Reviews(record), decision));

    private static string Reviews(JsonNode record) => $"/api/v1/records/{record.Text("id")}/reviews";

    private async Task<string> RecordsOnMapAsync(string taxon)
    {
        var map = await _server.GetJsonAsync($"/api/v1/taxa/{taxon}/presence");
        return map["features"]!.AsArray().Count.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
