using System.Net;
using System.Net.Http.Headers;

namespace RangeMap.Server.Tests.Http;

/// <summary>The same question to the same edition gives the same answer, and an import makes a new edition.</summary>
public sealed class EditionTests
{
    private const string Header = "occurrenceID,scientificName,eventDate,gridReference,recordedBy\n";
    private const string First = Header + "a,Inventa prima,2005-06-01,NZ2563,A. Invented\nb,Inventa secunda,2005-06-01,NZ2563,A. Invented\n";

    [Fact]
    public async Task AKnownAnswerIsNotSentAgainUntilAnImport()
    {
        await using var server = await RunningServer.StartAsync(First);
        using var first = await server.Client.GetAsync("/api/v1/taxa/prima/presence");
        var tag = first.Headers.ETag!;
        Assert.Equal(HttpStatusCode.NotModified, (await AskAsync(server, tag)).StatusCode);

        await server.Data.ImportTableAsync(Header + "c,Inventa prima,2006-06-01,SU1234,A. Invented\n");
        // The server looks for a new edition every half second.
        await Task.Delay(600);
        using var later = await AskAsync(server, tag);
        Assert.Equal(HttpStatusCode.OK, later.StatusCode);
        Assert.NotEqual(tag, later.Headers.ETag);
        Assert.Contains("SU13", await later.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnOldStateNeverAnswersWithNewRecords()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        await data.ImportTableAsync(First);
        var current = new CurrentData(data.Open().Database, FixedClock.Winter2026);
        var old = current.Now();
        Assert.Single(old.Cube(old.Find("prima")).Cells.ToArray());
        await data.ImportTableAsync(Header + "c,Inventa secunda,2006-06-01,SU1234,A. Invented\n");

        // Prima was read before the import, secunda would be read after it: their aggregate would be half of each.
        Assert.Throws<EditionPassedException>(() => old.Cube(old.Find("gemella-agg")));
        current.LookAgain();
        Assert.Equal(3, current.Now().Cube(current.Now().Find("gemella-agg")).Cells.ToArray().Sum(cell => cell.Counts.All));
    }

    [Fact]
    public async Task MapsReadDuringImportsShowTheOldOrTheNewStateAndNeverHalf()
    {
        await using var server = await RunningServer.StartAsync(First);
        // Each import adds ten records of either member: the aggregate's sum is 2, 22, 42 ...
        using var done = new CancellationTokenSource();
        var sums = new HashSet<int>();
        var reading = Task.Run(async () =>
        {
            while (!done.IsCancellationRequested)
            {
                var map = await server.GetAsync("/api/v1/taxa/gemella-agg/presence?format=csv&grid=1km");
                sums.Add(map.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Sum(line => int.Parse(line.Split(',')[4], System.Globalization.CultureInfo.InvariantCulture)));
            }
        });
        for (var batch = 1; batch <= 4; batch++)
        {
            var rows = Enumerable.Range(0, 10).SelectMany(i => (string[])[$"p{batch}-{i},Inventa prima,2006-06-01,NZ2563,A. Invented\n", $"s{batch}-{i},Inventa secunda,2006-06-01,NZ2563,A. Invented\n"]);
            Assert.Equal(20, (await server.Data.ImportTableAsync(Header + string.Concat(rows))).Int("accepted"));
            await Task.Delay(300);
        }

        await Task.Delay(600);
        await done.CancelAsync();
        await reading;
        Assert.Subset(new HashSet<int> { 2, 22, 42, 62, 82 }, sums);
        Assert.Contains(82, sums);
    }

    private static async Task<HttpResponseMessage> AskAsync(RunningServer server, EntityTagHeaderValue known)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/v1/taxa/prima/presence");
        request.Headers.IfNoneMatch.Add(known);
        return await server.Client.SendAsync(request);
    }
}
