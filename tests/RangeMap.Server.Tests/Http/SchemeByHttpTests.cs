using System.Net;
using System.Text;

namespace RangeMap.Server.Tests.Http;

/// <summary>The scheme's periods over HTTP and on the command line, and freezing over HTTP.</summary>
public sealed class SchemeByHttpTests
{
    private const string Table = "occurrenceID,scientificName,eventDate,gridReference,recordedBy\na,Inventa prima,2005-06-01,NZ2563,A. Invented\n";
    private const string Two = """[{"name":"first survey","period":"1990/1999"},{"name":"second survey","period":"2000/.."}]""";

    [Fact]
    public async Task TheFirstPeriodsAreTheProgramsAndEveryoneIsToldThem()
    {
        await using var server = await RunningServer.StartAsync();
        Assert.Equal(["../1999", "2000/2009", "2010/.."], await ToldAsync(server));
    }

    [Fact]
    public async Task ChangedPeriodsAreToldAtOnceAndAnOldAnswerIsNotTakenForNew()
    {
        await using var server = await RunningServer.StartAsync();
        using var organiser = await server.ClientOfAsync("A. Organiser", "organise");
        using var before = await server.Client.GetAsync("/api/v1/about");
        await RunningServer.JsonAsync(PutAsync(organiser, $$"""{"periods":{{Two}},"reason":"The surveys."}"""));
        using var again = new HttpRequestMessage(HttpMethod.Get, "/api/v1/about");
        again.Headers.IfNoneMatch.Add(before.Headers.ETag!);
        using var after = await server.Client.SendAsync(again);
        Assert.Equal(HttpStatusCode.OK, after.StatusCode);
        Assert.Equal(["1990/1999", "2000/.."], await ToldAsync(server));
    }

    [Fact]
    public async Task EveryChangeIsKeptAndCanBeGoneBackTo()
    {
        await using var server = await RunningServer.StartAsync();
        using var organiser = await server.ClientOfAsync("A. Organiser", "organise");
        await RunningServer.JsonAsync(PutAsync(organiser, $$"""{"periods":{{Two}},"reason":"The surveys."}"""));
        await RunningServer.JsonAsync(PutAsync(organiser, """{"periods":[{"name":"all","period":"../.."}],"reason":"A trial."}"""));
        var back = await RunningServer.JsonAsync(RestoreAsync(organiser, """{"number":1,"reason":"The trial is over."}"""));
        Assert.Equal(["The trial is over.", "A trial.", "The surveys."], back["history"]!.AsArray().Select(change => change!.Text("reason")));
        Assert.Equal("A. Organiser", back["history"]![0]!.Text("by"));
        Assert.Equal("first survey", back["periods"]![0]!.Text("name"));
        var own = await RunningServer.JsonAsync(RestoreAsync(organiser, """{"number":0,"reason":"None of these."}"""));
        Assert.True((bool)own["history"]![0]!["isOwn"]!);
        Assert.Equal(["../1999", "2000/2009", "2010/.."], await ToldAsync(server));
        (await ProblemAsync(RestoreAsync(organiser, """{"number":99,"reason":"Nowhere."}"""), HttpStatusCode.NotFound)).ShouldSay("no change 99");
    }

    [Theory]
    [InlineData("""[]""", "no period")]
    [InlineData("""[{"name":"","period":"2000/2009"}]""", "has no name")]
    [InlineData("""[{"name":"a name that is far too long to stand beside a map","period":"2000/2009"}]""", "at most 40")]
    [InlineData("""[{"name":"a","period":"2000/2009"},{"name":"A","period":"2010/.."}]""", "two periods are called")]
    [InlineData("""[{"name":"a","period":"soon"}]""", "ISO 8601")]
    [InlineData("""[{"name":"a","period":"2009/2000"}]""", "ends before it starts")]
    [InlineData("""[{"name":"late","period":"2010/.."},{"name":"early","period":"../1999"}]""", "oldest to the newest")]
    [InlineData("""[{"name":"a","period":"1990/2000"},{"name":"b","period":"2000/2009"}]""", "overlap")]
    [InlineData("""[{"name":"a","period":"../.."},{"name":"b","period":"2000/2009"}]""", "overlap")]
    [InlineData("""[{"name":"a","period":"1990/1999"},{"name":"b","period":"2005/2009"}]""", "1 January 2000 to 31 December 2004")]
    [InlineData("""[{"name":"1","period":"2001"},{"name":"2","period":"2002"},{"name":"3","period":"2003"},{"name":"4","period":"2004"},{"name":"5","period":"2005"},{"name":"6","period":"2006"},{"name":"7","period":"2007"},{"name":"8","period":"2008"},{"name":"9","period":"2009"}]""", "1 to 8")]
    public async Task PeriodsThatBreakARuleAreRefusedInWords(string periods, string words)
    {
        await using var server = await RunningServer.StartAsync();
        using var organiser = await server.ClientOfAsync("A. Organiser", "organise");
        (await ProblemAsync(PutAsync(organiser, $$"""{"periods":{{periods}},"reason":"Why not."}"""), HttpStatusCode.BadRequest)).ShouldSay(words);
        Assert.Equal(["../1999", "2000/2009", "2010/.."], await ToldAsync(server));
    }

    [Fact]
    public async Task AGapThatIsMeantStaysAndAChangeWithoutReasonDoesNotHappen()
    {
        await using var server = await RunningServer.StartAsync();
        using var organiser = await server.ClientOfAsync("A. Organiser", "organise");
        const string gap = """[{"name":"a","period":"1990/1999"},{"name":"b","period":"2005/2009"}]""";
        (await ProblemAsync(PutAsync(organiser, $$"""{"periods":{{gap}},"gapsAreMeant":true}"""), HttpStatusCode.BadRequest)).ShouldSay("no reason");
        await RunningServer.JsonAsync(PutAsync(organiser, $$"""{"periods":{{gap}},"gapsAreMeant":true,"reason":"Two surveys."}"""));
        Assert.Equal(["1990/1999", "2005/2009"], await ToldAsync(server));
    }

    [Fact]
    public async Task WhoeverSawAnOlderChangeChangesNothing()
    {
        await using var server = await RunningServer.StartAsync();
        using var organiser = await server.ClientOfAsync("A. Organiser", "organise");
        await RunningServer.JsonAsync(PutAsync(organiser, $$"""{"periods":{{Two}},"reason":"The surveys.","seen":0}"""));
        (await ProblemAsync(PutAsync(organiser, """{"periods":[{"name":"all","period":"../.."}],"reason":"A trial.","seen":0}"""), HttpStatusCode.Conflict)).ShouldSay("somebody else");
        Assert.Equal(["1990/1999", "2000/.."], await ToldAsync(server));
    }

    [Fact]
    public async Task TheCommandLineDoesTheSame()
    {
        await using var server = await RunningServer.StartAsync();
        var set = await server.Data.RunAsync("periods", "set", "first survey=1990/1999", "second=later=2000/..", "--reason", "The surveys.", "--by", "B. Organiser", "--json");
        Assert.Equal(["first survey", "second=later"], set.JsonLines.Select(period => period.Text("name")));
        var history = (await server.Data.RunAsync("periods", "history", "--json")).JsonLines.Single();
        Assert.Equal(("B. Organiser", "The surveys."), (history.Text("by"), history.Text("reason")));
        Assert.Equal(2, (await server.Data.RunAsync("periods", "set", "nonsense", "--reason", "None.")).Exit);
        Assert.Equal(0, (await server.Data.RunAsync("periods", "restore", "0", "--reason", "Back.")).Exit);
        (await server.Data.RunAsync("periods", "list")).Out.ShouldSay("since 2010 (2010/..)");
    }

    [Fact]
    public async Task OnlyAnOrganiserMayFreezeAndChangeSettings()
    {
        await using var server = await RunningServer.StartAsync(Table);
        using var reviewer = await server.ClientOfAsync("B. Reviewer", "review", "import");
        (await ProblemAsync(FreezeAsync(reviewer, """{"reason":"A report."}"""), HttpStatusCode.Forbidden)).ShouldSay("right to organise");
        (await ProblemAsync(PutAsync(reviewer, $$"""{"periods":{{Two}},"reason":"The surveys."}"""), HttpStatusCode.Forbidden)).ShouldSay("right to organise");
        (await ProblemAsync(FreezeAsync(server.Client, """{"reason":"A report."}"""), HttpStatusCode.Unauthorized)).ShouldSay("token");
        Assert.Empty((await server.GetJsonAsync("/api/v1/editions"))["editions"]!.AsArray());
    }

    [Fact]
    public async Task AnEditionFrozenOverHttpAnswersAndEqualDataAreTheSameEdition()
    {
        await using var server = await RunningServer.StartAsync(Table);
        using var organiser = await server.ClientOfAsync("A. Organiser", "organise");
        (await ProblemAsync(FreezeAsync(organiser, """{"title":"Atlas"}"""), HttpStatusCode.BadRequest)).ShouldSay("no reason");
        var first = await RunningServer.JsonAsync(FreezeAsync(organiser, """{"title":"Atlas","reason":"A report."}"""), HttpStatusCode.Created);
        Assert.Equal(("Atlas", "A report."), (first.Text("title"), first.Text("reason")));
        Assert.Contains("NZ26", await server.GetAsync($"/api/v1/exports/presence?edition={first.Text("id")}"), StringComparison.Ordinal);
        var second = await RunningServer.JsonAsync(FreezeAsync(organiser, """{"title":"Another","reason":"Again."}"""));
        Assert.Equal((first.Text("id"), "Atlas"), (second.Text("id"), second.Text("title")));
    }

    [Fact]
    public async Task GroupsAndRegionsAreTold()
    {
        await using var server = await RunningServer.StartAsync(Table);
        var groups = (await server.GetJsonAsync("/api/v1/groups"))["groups"]!.AsArray();
        var inventas = groups.Single(group => (string?)group!["name"] == "inventas")!;
        Assert.True(inventas.Int("taxa") > inventas.Int("withRecords"));
        Assert.Contains("England", (await server.GetJsonAsync("/api/v1/regions"))["regions"]!.AsArray().Select(region => (string)region!));
    }

    private static async Task<IEnumerable<string>> ToldAsync(RunningServer server) =>
        (await server.GetJsonAsync("/api/v1/about"))["periods"]!.AsArray().Select(period => period!.Text("period"));

    private static Task<HttpResponseMessage> PutAsync(HttpClient client, string json) => client.PutAsync("/api/v1/scheme/periods", Body(json));

    private static Task<HttpResponseMessage> RestoreAsync(HttpClient client, string json) => client.PostAsync("/api/v1/scheme/periods/restore", Body(json));

    private static Task<HttpResponseMessage> FreezeAsync(HttpClient client, string json) => client.PostAsync("/api/v1/editions", Body(json));

    private static StringContent Body(string json) => new(json, Encoding.UTF8, "application/json");

    private static async Task<string> ProblemAsync(Task<HttpResponseMessage> asking, HttpStatusCode status) => (await RunningServer.JsonAsync(asking, status)).Text("detail");
}
