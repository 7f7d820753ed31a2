using System.Text.Json.Nodes;

namespace RangeMap.Server.Tests.Http;

/// <summary>Reports of change over HTTP, on a small world in which every square was counted by hand.</summary>
public sealed class ChangeByHttpTests
{
    // prima: NZ26 in both periods, SU12 only before and looked at later, J37 only later and never before; SU13 was visited in neither.
    private const string World = """
        occurrenceID,scientificName,eventDate,gridReference,recordedBy
        a1,Inventa prima,2001-06-01,NZ2563,A. Invented
        a2,Inventa prima,2001-06-02,SU1224,A. Invented
        a3,Inventa secunda,2002-06-02,SU3234,A. Invented
        b1,Inventa prima,2011-06-01,NZ2563,A. Invented
        b2,Inventa secunda,2011-06-02,SU1224,A. Invented
        b3,Inventa prima,2012-06-02,J3374,B. Invented
        b4,Inventa prima,2012-06-03,SU3234,B. Invented
        """;

    private const string Periods = "from=2000/2009&to=2010/2019";

    [Fact]
    public async Task GainsLossesAndUnknownSquaresAreToldApart()
    {
        await using var server = await RunningServer.StartAsync(World);
        var map = await server.GetJsonAsync($"/api/v1/taxa/prima/change?{Periods}&format=geojson");
        var fates = map["features"]!.AsArray().ToDictionary(f => f!["properties"]!.Text("square"), f => f!["properties"]!.Text("change"));
        Assert.Equal(
            new SortedDictionary<string, string> { ["NZ26"] = "kept", ["SU12"] = "lost", ["SU33"] = "gained", ["J37"] = "not-surveyed-before" },
            new SortedDictionary<string, string>(fates));
        var report = await server.GetJsonAsync($"/api/v1/taxa/prima/change?{Periods}");
        var verdict = report["verdicts"]!.AsArray().Single()!;
        Assert.Equal((1, 1, 1, 1, 0), (verdict.Int("gained"), verdict.Int("lost"), verdict.Int("kept"), verdict.Int("notSurveyedBefore"), verdict.Int("notSurveyedAfter")));
        var effort = report["effort"]!.AsArray().Single()!["periods"]!.AsArray();
        Assert.Equal((3, 3), (effort[0]!.Int("visits"), effort[0]!.Int("squares")));
        Assert.Equal((4, 4), (effort[1]!.Int("visits"), effort[1]!.Int("squares")));
    }

    [Fact]
    public async Task EachMeasureHasEitherNumbersWithAnIntervalOrAReason()
    {
        await using var server = await RunningServer.StartAsync(World);
        var report = await server.GetJsonAsync($"/api/v1/change?{Periods}");
        var measures = report["taxa"]!.AsArray();
        Assert.NotEmpty(measures);
        Assert.All(measures, one =>
        {
            string[] members = ["taxon", "method", "value", "low", "high", "n", "note", "refused"];
            Assert.Empty(members.Except(one!.AsObject().Select(member => member.Key)));
            Assert.NotEqual(one!["value"] is null, one["refused"] is null);
            Assert.Equal(one["value"] is null, one["low"] is null);
        });
        // Four squares carry nothing: what is missing is said, with the number that there are.
        Assert.Contains(measures, one => one!["refused"] is { } why && ((string)why!).Contains("at least 5", StringComparison.Ordinal));
    }

    [Fact]
    public async Task ATableOfAllTaxaHasOneRowATaxonAndMethod()
    {
        await using var server = await RunningServer.StartAsync(World);
        var report = await server.GetJsonAsync($"/api/v1/change?{Periods}");
        var lines = (await server.GetAsync($"/api/v1/change?{Periods}&format=csv")).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("taxon,scientificName,grid,from,to,method,unit,value,low,high,before,after,n,p,note,refused,edition", lines[0]);
        Assert.Equal(report["taxa"]!.AsArray().Count, lines.Length - 1);
    }

    [Fact]
    public async Task TheEffortOfEverySquareIsToldForBothPeriods()
    {
        await using var server = await RunningServer.StartAsync(World);
        var map = await server.GetJsonAsync($"/api/v1/effort?group=inventas&{Periods}");
        var squares = map["features"]!.AsArray().ToDictionary(f => f!["properties"]!.Text("square"), f => f!["properties"]!);
        Assert.Equal(["J37", "NZ26", "SU12", "SU33"], squares.Keys.Order(StringComparer.Ordinal));
        Assert.Equal((1, 1, 1, 1), (squares["SU12"].Int("visitsBefore"), squares["SU12"].Int("visitsAfter"), squares["SU12"].Int("gained"), squares["SU12"].Int("lost")));
        Assert.Equal((0, 1), (squares["J37"].Int("visitsBefore"), squares["J37"].Int("taxaAfter")));
        // One visit is not enough to compare what was found.
        Assert.All(squares.Values, square => Assert.Null(square["similarity"]));
    }

    [Fact]
    public async Task AnAggregateTakesThePlaceOfItsMembers()
    {
        await using var server = await RunningServer.StartAsync("""
            occurrenceID,scientificName,eventDate,gridReference,recordedBy
            g1,Inventa gemella agg.,2001-06-01,NZ2563,A. Invented
            g2,Inventa gemella agg.,2011-06-01,SU1224,A. Invented
            """);
        var report = await server.GetJsonAsync($"/api/v1/taxa/gemella-agg/change?{Periods}");
        Assert.All(report["taxa"]!.AsArray(), one => Assert.Equal("gemella-agg", one!.Text("taxon")));
        Assert.DoesNotContain((await server.GetJsonAsync($"/api/v1/change?{Periods}"))["taxa"]!.AsArray().OfType<JsonNode>(), one => one.Text("taxon") == "gemella-agg");
    }
}
