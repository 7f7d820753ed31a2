using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;

namespace RangeMap.Server.Tests.Http;

/// <summary>Sending files over HTTP, as the viewer does: send, state the columns, watch, read the report, mend, take back.</summary>
public sealed class ImportByHttpTests : IAsyncLifetime
{
    private const string Table = """
        id,what,when,where
        r1,Inventa prima,2005-06-01,NZ2563
        r2,Inventa prima,2006-06-01,NZ2663
        r3,Inventa nulla,2006-06-01,NZ2663
        """;

    private static readonly object Mapping = new { columns = new Dictionary<string, string> { ["id"] = "occurrenceID", ["what"] = "scientificName", ["when"] = "eventDate", ["where"] = "gridReference" } };

    private RunningServer _server = null!;
    private HttpClient _organiser = null!;

    public async ValueTask InitializeAsync()
    {
        _server = await RunningServer.StartAsync();
        _organiser = await _server.ClientOfAsync("O. Invented");
    }

    public async ValueTask DisposeAsync()
    {
        _organiser.Dispose();
        await _server.DisposeAsync();
    }

    [Fact]
    public async Task AFileIsSentStartedWatchedAndBecomesPartOfTheMaps()
    {
        var sent = await SendAsync(Table);
        Assert.Equal(("received", "finds.csv", "O. Invented"), (sent.Text("state"), sent.Text("file"), sent.Text("by")));

        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{sent.Text("id")}/start", new { mapping = Mapping }), HttpStatusCode.Accepted);
        var end = await EndAsync(sent.Text("id"));

        Assert.Equal("done", end.Text("state"));
        var report = end["report"]!;
        Assert.Equal((3, 2, 1), (report.Int("read"), report.Int("accepted"), report.Int("refused")));
        Assert.Equal("gridReference", report["mapping"]!.Text("where"));
        Assert.Equal(2, (await _server.GetJsonAsync("/api/v1/taxa/prima/presence"))["features"]!.AsArray().Count + 1);
        var kept = await RunningServer.JsonAsync(_organiser.GetAsync($"/api/v1/imports/{end.Int("batch")}"));
        Assert.Equal(("done", "O. Invented"), (kept.Text("state"), kept.Text("by")));
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(_server.Data.Data, "uploads")));
    }

    [Fact]
    public async Task RefusedRowsAreDownloadedMendedAndSentAgain()
    {
        var batch = (await ImportAsync(Table)).Int("batch");
        var listed = await RunningServer.JsonAsync(_organiser.GetAsync($"/api/v1/imports/{batch}/refusals"));
        Assert.Equal((1, 3, "what"), (listed.Int("total"), listed["refusals"]![0]!.Int("row"), listed["refusals"]![0]!.Text("field")));

        var csv = await _organiser.GetStringAsync($"/api/v1/imports/{batch}/refusals.csv");
        var mended = csv.Replace("Inventa nulla", "Inventa prima", StringComparison.Ordinal);
        var again = await ImportAsync(mended);

        Assert.Equal((1, 1, 0), (again["report"]!.Int("read"), again["report"]!.Int("accepted"), again["report"]!.Int("refused")));
    }

    [Fact]
    public async Task ADryRunKeepsNothingAndTheFileCanThenBeStarted()
    {
        var id = (await SendAsync(Table)).Text("id");
        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/start", new { mapping = Mapping, dryRun = true }), HttpStatusCode.Accepted);
        var tried = await EndAsync(id);
        Assert.Equal(("received", 2, true), (tried.Text("state"), tried["report"]!.Int("accepted"), (bool)tried["report"]!["dryRun"]!));
        Assert.Empty((await _server.GetJsonAsync("/api/v1/taxa/prima/presence"))["features"]!.AsArray());
        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/start", new { mapping = Mapping }), HttpStatusCode.Accepted);
        Assert.Equal("done", (await EndAsync(id)).Text("state"));
    }

    [Fact]
    public async Task AnImportTakenBackLeavesNothingAndIsToldSo()
    {
        var end = await ImportAsync(Table);
        var undone = await RunningServer.JsonAsync(_organiser.DeleteAsync($"/api/v1/imports/{end.Text("id")}"));
        Assert.Equal(2, undone.Int("removed"));
        Assert.Empty((await _server.GetJsonAsync("/api/v1/taxa/prima/presence"))["features"]!.AsArray());
        Assert.Equal("undone", (await RunningServer.JsonAsync(_organiser.GetAsync($"/api/v1/imports/{end.Int("batch")}"))).Text("state"));
        await RunningServer.JsonAsync(_organiser.DeleteAsync($"/api/v1/imports/{end.Int("batch")}"), HttpStatusCode.Conflict);
    }

    [Fact]
    public async Task AFileThatCannotBeReadFailsWithTheReasonAndCanBeStartedAgainWithAMapping()
    {
        var id = (await SendAsync(Table)).Text("id");
        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/start", new { }), HttpStatusCode.Accepted);
        var failed = await EndAsync(id);
        Assert.Equal("failed", failed.Text("state"));
        Assert.Contains("No column was recognised", failed["problem"]!.Text("what"), StringComparison.Ordinal);
        Assert.Contains("finds.csv", failed["problem"]!.Text("where"), StringComparison.Ordinal);
        Assert.DoesNotContain(_server.Data.Data, failed.ToJsonString(), StringComparison.Ordinal);
        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/start", new { mapping = Mapping }), HttpStatusCode.Accepted);
        Assert.Equal("done", (await EndAsync(id)).Text("state"));
    }

    [Fact]
    public async Task AFileTakenAwayIsGone()
    {
        var id = (await SendAsync(Table)).Text("id");
        using var gone = await _organiser.DeleteAsync($"/api/v1/imports/{id}");
        Assert.Equal(HttpStatusCode.NoContent, gone.StatusCode);
        await RunningServer.JsonAsync(_organiser.GetAsync($"/api/v1/imports/{id}"), HttpStatusCode.NotFound);
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(_server.Data.Data, "uploads")));
    }

    [Fact]
    public async Task AFileThatWaitedWhenTheServerStoppedIsThereWhenItStartsAgain()
    {
        var id = (await SendAsync(Table)).Text("id");
        await File.WriteAllTextAsync(Path.Combine(_server.Data.Data, "uploads", "u0000000000000000.part"), "half sent");
        await using var again = ServerHost.Build(_server.Data.Open(), "http://127.0.0.1:0", FixedClock.Winter2026);
        await again.StartAsync();
        using var client = new HttpClient { BaseAddress = new(again.Urls.Single()) };
        client.DefaultRequestHeaders.Authorization = _organiser.DefaultRequestHeaders.Authorization;
        var left = (await RunningServer.JsonAsync(client.GetAsync("/api/v1/imports")))["imports"]!.AsArray().Single()!;
        Assert.Equal((id, "received", "finds.csv"), (left.Text("id"), left.Text("state"), left.Text("file")));
        Assert.Equal(2, Directory.EnumerateFiles(Path.Combine(_server.Data.Data, "uploads")).Count());
    }

    [Fact]
    public async Task TheEventsEndWithTheReport()
    {
        var id = (await SendAsync(Table)).Text("id");
        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/start", new { mapping = Mapping }), HttpStatusCode.Accepted);
        var events = await _organiser.GetStringAsync($"/api/v1/imports/{id}/events");
        Assert.Contains("event: end", events, StringComparison.Ordinal);
        Assert.Contains("\"accepted\":2", events, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheMappingOfAnImportIsTheMappingOfTheNext()
    {
        var batch = (await ImportAsync(Table)).Int("batch");
        var saved = JsonNode.Parse(await _organiser.GetStringAsync($"/api/v1/imports/{batch}/mapping.json"))!;
        Assert.Equal("scientificName", saved["columns"]!.Text("what"));
        var id = (await SendAsync(Table.Replace("r1", "r9", StringComparison.Ordinal))).Text("id");
        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/start", new { mapping = saved }), HttpStatusCode.Accepted);
        Assert.Equal((1, 1), ((await EndAsync(id))["report"]!.Int("accepted"), (await EndAsync(id))["report"]!.Int("unchanged")));
    }

    [Fact]
    public async Task ThePreviewShowsColumnsThatNobodyNamedYetAndThenHowTheRowsWouldBeRead()
    {
        var id = (await SendAsync(Table)).Text("id");
        var unread = await PreviewAsync(id, new { });
        Assert.Contains("No column was recognised", unread["problem"]!.Text("what"), StringComparison.Ordinal);
        Assert.Equal(["id", "what", "when", "where"], unread["columns"]!.AsArray().Select(column => column!.Text("name")));
        Assert.Equal(["NZ2563", "NZ2663"], unread["columns"]![3]!["samples"]!.AsArray().Select(sample => (string)sample!));
        Assert.Contains(unread["terms"]!.AsArray(), term => term!.Text("name") == "gridReference" && term!.Text("about").Length > 0);

        var read = await PreviewAsync(id, new { mapping = Mapping });
        Assert.Null(read["problem"]);
        Assert.Equal((3, 2, 1), (read["counts"]!.Int("read"), read["counts"]!.Int("accepted"), read["counts"]!.Int("refused")));
        Assert.Equal(("Inventa prima", "NZ2563", "2005-06-01"), (read["rows"]![0]!.Text("taxon"), read["rows"]![0]!.Text("square"), read["rows"]![0]!.Text("dates")));
        Assert.Equal("what", read["rows"]![2]!["refused"]!.Text("field"));
        Assert.Empty((await _server.GetJsonAsync("/api/v1/taxa/prima/presence"))["features"]!.AsArray());
    }

    [Fact]
    public async Task AnUnknownNameIsAcceptedOnceAndItsRowsAreSentAgain()
    {
        var batch = (await ImportAsync(Table.Replace("Inventa nulla", "Inventa primma", StringComparison.Ordinal))).Int("batch");
        var unknown = (await RunningServer.JsonAsync(_organiser.GetAsync($"/api/v1/imports/{batch}/names")))["names"]!.AsArray().Single()!;
        Assert.Equal(("Inventa primma", 1, "prima"), (unknown.Text("name"), unknown.Int("rows"), unknown["suggestions"]![0]!.Text("taxon")));

        using var accepted = await _organiser.PostAsJsonAsync("/api/v1/names", new { name = "inventa  PRIMMA", taxon = "prima" });
        Assert.Equal(HttpStatusCode.NoContent, accepted.StatusCode);
        var again = await RunningServer.JsonAsync(_organiser.PostAsync($"/api/v1/imports/{batch}/retry", null), HttpStatusCode.Created);
        var end = await EndAsync(again.Text("id"));

        Assert.Equal((1, 0), (end["report"]!.Int("accepted"), end["report"]!.Int("refused")));
        var names = (await RunningServer.JsonAsync(_organiser.GetAsync("/api/v1/names")))["names"]!.AsArray();
        Assert.Equal("O. Invented", names.Single()!.Text("acceptedBy"));
        using var forgotten = await _organiser.DeleteAsync("/api/v1/names/Inventa%20primma");
        Assert.Equal(HttpStatusCode.NoContent, forgotten.StatusCode);
        await RunningServer.JsonAsync(_organiser.DeleteAsync("/api/v1/names/Inventa%20primma"), HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task RefusedRowsSentAgainAreReadInTheOrderOfDatesThatTheWholeFileProved()
    {
        const string table = "id,what,when,where\nr1,Inventa prima,13/06/2005,NZ2563\nr2,Inventa primma,03/06/2006,NZ2663\n";
        var batch = (await ImportAsync(table)).Int("batch");
        using var accepted = await _organiser.PostAsJsonAsync("/api/v1/names", new { name = "Inventa primma", taxon = "prima" });
        var end = await RetryAsync(batch);

        Assert.Equal(("done", 1), (end.Text("state"), end["report"]!.Int("accepted")));
        var records = await RunningServer.JsonAsync(_organiser.GetAsync("/api/v1/records?from=2006-06-03&to=2006-06-03"));
        Assert.Equal("NZ2663", records["records"]!.AsArray().Single()!.Text("square"));
    }

    [Fact]
    public async Task RefusedRowsSentAgainStillAddNewNames()
    {
        var id = (await SendAsync("id,what,when,where\nr1,Inventa nova,2005-02-31,NZ2563\n")).Text("id");
        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/start", new { mapping = Mapping, newTaxa = true }), HttpStatusCode.Accepted);
        var again = await RetryAsync((await EndAsync(id)).Int("batch"));
        var refused = await RunningServer.JsonAsync(_organiser.GetAsync($"/api/v1/imports/{again.Int("batch")}/refusals"));

        // Were new names not added, the name would be refused before the date is read.
        Assert.Equal("when", refused["refusals"]![0]!.Text("field"));
    }

    [Fact]
    public async Task CompleteListsAreToldInTheReportTheRecordAndTheSquare()
    {
        const string table = "id,what,when,where,completeList\nr1,Inventa prima,2005-06-01,NZ2563,yes\nr2,Inventa prima,2005-06-02,NZ2563,no\n";
        var batch = (await ImportAsync(table)).Int("batch");
        var kept = await RunningServer.JsonAsync(_organiser.GetAsync($"/api/v1/imports/{batch}"));
        Assert.Equal("1 record stands on a complete list: what the list lacks was looked for and not found.", (string?)kept["report"]!["notes"]!.AsArray().Single());
        var records = await RunningServer.JsonAsync(_organiser.GetAsync("/api/v1/records?from=2005-06-01"));
        Assert.Equal([true, false], records["records"]!.AsArray().Select(record => (bool)record!["onCompleteList"]!));
        var square = await _server.GetJsonAsync("/api/v1/squares/NZ2563");
        Assert.Equal((2, 1), (square.Int("visits"), square.Int("completeVisits")));
        Assert.Equal(0, (await _server.Data.RunAsync("verify")).Exit);
    }

    [Fact]
    public async Task OnlyATokenWithTheRightMaySend()
    {
        using var reviewer = await _server.ClientOfAsync("R. Invented", "review");
        await RunningServer.JsonAsync(_server.Client.PostAsync("/api/v1/imports?dataset=d&file=f.csv", Body(Table)), HttpStatusCode.Unauthorized);
        var refused = await RunningServer.JsonAsync(reviewer.PostAsync("/api/v1/imports?dataset=d&file=f.csv", Body(Table)), HttpStatusCode.Forbidden);
        Assert.Contains("import", refused.Text("detail"), StringComparison.Ordinal);
        using var stranger = new HttpClient { BaseAddress = _server.Client.BaseAddress };
        stranger.DefaultRequestHeaders.Authorization = new("Bearer", "rangemap-" + new string('0', 64));
        await RunningServer.JsonAsync(stranger.GetAsync("/api/v1/imports"), HttpStatusCode.Unauthorized);
        Assert.False(Directory.Exists(Path.Combine(_server.Data.Data, "uploads")));
    }

    [Fact]
    public async Task ARevokedTokenCountsNoMore()
    {
        await RunningServer.JsonAsync(_organiser.GetAsync("/api/v1/me"));
        Assert.Equal(0, (await _server.Data.RunAsync("token", "revoke", "1")).Exit);
        await RunningServer.JsonAsync(_organiser.GetAsync("/api/v1/me"), HttpStatusCode.Unauthorized);
        Assert.Contains("revoked", (await _server.Data.RunAsync("token", "list")).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", HttpStatusCode.BadRequest)]
    [InlineData("?dataset=d", HttpStatusCode.BadRequest)]
    [InlineData("?dataset=%20&file=f.csv", HttpStatusCode.BadRequest)]
    [InlineData("?dataset=d&file=f.csv&dateOrder=ymd", HttpStatusCode.BadRequest)]
    public async Task ASendingWithoutItsParticularsIsRefused(string query, HttpStatusCode status) =>
        await RunningServer.JsonAsync(_organiser.PostAsync($"/api/v1/imports{query}", Body(Table)), status);

    [Fact]
    public async Task AnEmptyFileIsRefusedAndLeavesNothing()
    {
        var refused = await RunningServer.JsonAsync(_organiser.PostAsync("/api/v1/imports?dataset=d&file=f.csv", Body("")), HttpStatusCode.BadRequest);
        Assert.Contains("empty", refused.Text("detail"), StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(_server.Data.Data, "uploads")));
    }

    [Fact]
    public async Task AFileLongerThanTheServerTakesIsRefusedAndLeavesNothing()
    {
        await using var small = ServerHost.Build(_server.Data.Open(), "http://127.0.0.1:0", FixedClock.Winter2026, new() { MostUploadBytes = 1 << 20 });
        await small.StartAsync();
        using var client = new HttpClient { BaseAddress = new(small.Urls.Single()) };
        client.DefaultRequestHeaders.Authorization = _organiser.DefaultRequestHeaders.Authorization;
        // Sent in chunks, so that nobody knows its length before it is read.
        client.DefaultRequestHeaders.TransferEncodingChunked = true;
        var refused = await RunningServer.JsonAsync(client.PostAsync("/api/v1/imports?dataset=d&file=f.csv", Body(new string('x', 3 << 20))), HttpStatusCode.RequestEntityTooLarge);
        Assert.Contains("1 MB", refused.Text("detail"), StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(_server.Data.Data, "uploads")));
    }

    [Fact]
    public async Task AFileThatSaysItIsTooLongIsRefusedBeforeAnyOfItIsSent()
    {
        await using var small = ServerHost.Build(_server.Data.Open(), "http://127.0.0.1:0", FixedClock.Winter2026, new() { MostUploadBytes = 1 << 20 });
        await small.StartAsync();
        using var client = new HttpClient { BaseAddress = new(small.Urls.Single()) };
        using var file = new UnreadFile();
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/imports?dataset=d&file=f.csv") { Content = file };
        request.Headers.Authorization = _organiser.DefaultRequestHeaders.Authorization;
        request.Headers.ExpectContinue = true;
        var refused = await RunningServer.JsonAsync(client.SendAsync(request), HttpStatusCode.RequestEntityTooLarge);
        Assert.Contains("gzip", refused.Text("detail"), StringComparison.Ordinal);
        Assert.False(file.WasAsked);
        Assert.Equal(1 << 20, (await RunningServer.JsonAsync(AsOrganiserAsync(client, "/api/v1/imports"))).Int("mostBytes"));
    }

    [Theory]
    [InlineData("../../etc/passwd", "passwd")]
    [InlineData("C:\\finds\\May.csv", "May.csv")]
    [InlineData("..", "..")]
    [InlineData("a\u0000b\n.csv", "ab.csv")]
    public async Task TheNameOfAFileIsANameAndNoPath(string given, string kept)
    {
        var sent = await RunningServer.JsonAsync(_organiser.PostAsync($"/api/v1/imports?dataset=d&file={Uri.EscapeDataString(given)}", Body(Table)), HttpStatusCode.Created);
        Assert.Equal(kept, sent.Text("file"));
        Assert.Equal(2, Directory.EnumerateFiles(Path.Combine(_server.Data.Data, "uploads")).Count());
    }

    private async Task<JsonNode> SendAsync(string table) =>
        await RunningServer.JsonAsync(_organiser.PostAsync("/api/v1/imports?dataset=finds&file=finds.csv", Body(table)), HttpStatusCode.Created);

    private async Task<JsonNode> ImportAsync(string table)
    {
        var id = (await SendAsync(table)).Text("id");
        await RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/start", new { mapping = Mapping }), HttpStatusCode.Accepted);
        return await EndAsync(id);
    }

    private async Task<JsonNode> RetryAsync(int batch) =>
        await EndAsync((await RunningServer.JsonAsync(_organiser.PostAsync($"/api/v1/imports/{batch}/retry", null), HttpStatusCode.Created)).Text("id"));

    private async Task<JsonNode> EndAsync(string id)
    {
        await _organiser.GetStringAsync($"/api/v1/imports/{id}/events");
        return await RunningServer.JsonAsync(_organiser.GetAsync($"/api/v1/imports/{id}"));
    }

    private Task<JsonNode> PreviewAsync(string id, object start) => RunningServer.JsonAsync(_organiser.PostAsJsonAsync($"/api/v1/imports/{id}/preview", start));

    private async Task<HttpResponseMessage> AsOrganiserAsync(HttpClient client, string path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.Authorization = _organiser.DefaultRequestHeaders.Authorization;
        return await client.SendAsync(request);
    }

    /// <summary>A file of 10 GB that tells whether anybody wanted it.</summary>
    private sealed class UnreadFile : HttpContent
    {
        public bool WasAsked { get; private set; }

        protected override Task SerializeToStreamAsync(Stream stream, TransportContext? context)
        {
            WasAsked = true;
            return Task.CompletedTask;
        }

        protected override bool TryComputeLength(out long length)
        {
            length = 10_000_000_000;
            return true;
        }
    }

    private static StringContent Body(string table) => new(table, Encoding.UTF8, "text/csv");
}
