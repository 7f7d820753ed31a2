using System.Text.Json.Nodes;

namespace RangeMap.Server.Tests.Commands;

public sealed class SpreadTests
{
    [Fact]
    public async Task AStraightAdvanceIsMeasuredExactly()
    {
        // Twenty years at 10 km a year without scatter: every regression must say 10 by construction.
        var run = await CommandRun.TypedAsync(Advance("year,distance", year => $"{year},{(year - 2000) * 10}"), "spread", "--table", "-", "--units", "km", "--json");
        Assert.Equal(0, run.Exit);
        Assert.Equal(10, (double)Method(run.Json, "all-points")["kmPerYear"]!, 6);
    }

    [Fact]
    public async Task MetresAndKilometresAgree()
    {
        var metres = await CommandRun.TypedAsync(Advance("year,x,y", year => $"{year},{400_000 + (year - 2000) * 6000 + year % 3 * 500},{300_000 + (year - 2000) * 8000}"), "spread", "--table", "-", "--json");
        var km = await CommandRun.TypedAsync(Advance("year,x,y", year => FormattableString.Invariant($"{year},{400 + (year - 2000) * 6 + year % 3 * 0.5},{300 + (year - 2000) * 8}")), "spread", "--table", "-", "--units", "km", "--json");
        Assert.Equal((double)Method(metres.Json, "all-points")["kmPerYear"]!, (double)Method(km.Json, "all-points")["kmPerYear"]!, 4);
    }

    [Fact]
    public async Task MachineOutputHasTheAgreedMembers()
    {
        var json = (await CommandRun.TypedAsync(Advance("year,distance", year => $"{year},{(year - 2000) * 10}"), "spread", "--table", "-", "--json")).Json;
        Assert.Empty(((string[])["taxon", "grid", "squares", "firstYear", "lastYear", "origin", "estimators", "sectors", "phases", "jumps", "originRange", "summary"]).Except(json.Names()));
        Assert.All(json["estimators"]!.AsArray(), one => Assert.Empty(((string[])["method", "kmPerYear", "low", "high", "n", "note", "refused"]).Except(one!.Names())));
        Assert.All(json["estimators"]!.AsArray(), one => Assert.NotEqual(one!["kmPerYear"] is null, one["refused"] is null));
    }

    [Fact]
    public async Task ASquareFarAheadIsListedWithItsPlace()
    {
        // Forty squares eastwards, two a year, and one 300 km ahead in 2010.
        var rows = Enumerable.Range(0, 40).Select(i => $"{2000 + i / 2},{5 + i * 10},{i % 3 * 10}").Append("2010,505,5");
        var table = "year,x,y\n" + string.Join('\n', rows) + "\n";
        var json = (await CommandRun.TypedAsync(table, "spread", "--table", "-", "--units", "km", "--json")).Json;
        var jump = Assert.Single(json["jumps"]!.AsArray())!;
        Assert.Equal((505_000, 5000, 2010, 1), ((int)jump["easting"]!, (int)jump["northing"]!, (int)jump["year"]!, (int)jump["squares"]!));
        Assert.InRange((double)json["originRange"]!["high"]!, 15, 25);
        var text = (await CommandRun.TypedAsync(table, "spread", "--table", "-", "--units", "km")).Out;
        Assert.Contains("far ahead", text, StringComparison.Ordinal);
        Assert.Contains("505000 5000", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "year")]
    [InlineData("year\n2000\n", "year,x,y")]
    [InlineData("when,how far\n2000,1\n", "when, how far")]
    [InlineData("year,distance\n2000,far\n", "'far' is no number")]
    [InlineData("year,distance\n2000,NaN\n", "'NaN' is no number")]
    [InlineData("year,distance\n2000,\n", "is no number")]
    [InlineData("year,distance\n2000,1e999\n", "is no number")]
    [InlineData("year,distance\n2000,\"1,5\"\n", "is no number")]
    [InlineData("year,distance\n2000,1\n2001\n", "cannot be read")]
    [InlineData("year,distance,distance\n2000,1,2\n", "cannot be read")]
    [InlineData("year,distance\n2000,\"1\n2001,2\n", "cannot be read|is no number")]
    public async Task ABadTableIsExplained(string table, string anyOfTheseWords)
    {
        var run = await CommandRun.TypedAsync(table, "spread", "--table", "-");
        run.Failed(1);
        Assert.Contains(anyOfTheseWords.Split('|'), words => run.Error.Contains(words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("year,distance\n")]
    [InlineData("year,distance\n2000,5\n")]
    [InlineData("year,x,y\n2000,1,1\n2000,1,1\n2000,1,1\n")]
    [InlineData("year,distance\n2000,1e300\n2001,-1e300\n2002,0\n")]
    public async Task TooLittleToMeasureIsSaidAndNotGuessed(string table)
    {
        var run = await CommandRun.TypedAsync(table, "spread", "--table", "-", "--json");
        Assert.Equal(0, run.Exit);
        Assert.All(run.Json["estimators"]!.AsArray(), one => Assert.True(one!["kmPerYear"] is null && one["refused"] is not null, one.ToJsonString()));
    }

    [Fact]
    public async Task ATaxonWithoutRecordsHasNoSpeed()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var run = await data.RunAsync("spread", "prima");
        Assert.Equal(0, run.Exit);
        Assert.Contains("not enough squares", run.Out, StringComparison.OrdinalIgnoreCase);
        (await data.RunAsync("spread", "prima", "--origin", "somewhere")).Failed(2, "grid reference");
    }

    private static string Advance(string header, Func<int, string> row) => header + "\n" + string.Join('\n', Enumerable.Range(2000, 20).Select(row)) + "\n";

    private static JsonNode Method(JsonNode report, string method) => report["estimators"]!.AsArray().Single(one => one!.Text("method") == method)!;
}
