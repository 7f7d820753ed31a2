namespace RangeMap.Server.Tests.Commands;

public sealed class GridTests
{
    private static readonly string[] Agreed = ["input", "ok", "system", "name", "size", "easting", "northing", "latitude", "longitude", "squares", "error"];

    [Fact]
    public async Task AReferenceGivesItsSquaresAndItsMiddle()
    {
        var json = (await CommandRun.OfAsync("grid", "NZ256634", "--json")).Json;
        Assert.Equal((true, "NZ256634", "100m", 425600.0, 563400.0), ((bool)json["ok"]!, json.Text("name"), json.Text("size"), (double)json["easting"]!, (double)json["northing"]!));
        Assert.Equal(("NZ26", "NZ26SE", "NZ26L", "NZ2563"), (json["squares"]!.Text("10km"), json["squares"]!.Text("5km"), json["squares"]!.Text("2km"), json["squares"]!.Text("1km")));
    }

    [Fact]
    public async Task CoordinatesGiveTheirPointAndSquares()
    {
        // Ordnance Survey, A guide to coordinate systems in Great Britain, worked example: ETRS89 52 39 28.8282 N, 1 42 57.8663 E
        // is easting 651409.8, northing 313177.4 by OSTN15. Six decimals are good to about 0.1 m.
        var json = (await CommandRun.OfAsync("grid", "52.658007, 1.716074", "--json")).Json;
        Assert.Equal(651409.8, (double)json["easting"]!, 0.2);
        Assert.Equal(313177.4, (double)json["northing"]!, 0.2);
        Assert.Equal("TG51", json["squares"]!.Text("10km"));
        Assert.Equal(52.658007, (double)json["latitude"]!, 9);
    }

    [Fact]
    public async Task EveryLineOfMachineOutputHasEveryAgreedMember()
    {
        var run = await CommandRun.TypedAsync("TQ3080\nnonsense\n\n54.9712, -1.6123\nJ3374\nWV6548\n48.85 2.35\n", "grid", "-i", "-", "--json");
        Assert.Equal(1, run.Exit);
        Assert.Equal([true, false, true, true, true, false], run.JsonLines.Select(line => (bool)line["ok"]!));
        Assert.All(run.JsonLines, line => Assert.Empty(Agreed.Except(line.Names())));
        Assert.All(run.JsonLines, line => Assert.Equal((bool)line["ok"]!, line["error"] is null));
        Assert.Equal("nonsense", run.JsonLines[1].Text("input"));
    }

    [Fact]
    public async Task ManyLinesOfAFileAreReadInOrder()
    {
        using var data = new DataDirectory();
        var lines = Enumerable.Range(0, 3000).Select(i => FormattableString.Invariant($"NZ{i:0000}")).ToArray();
        var run = await CommandRun.OfAsync("grid", "-i", data.Write("places.txt", string.Join("\r\n", lines)), "--json");
        Assert.Equal(0, run.Exit);
        Assert.Equal(lines, run.JsonLines.Select(line => line.Text("name")));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("\0")]
    [InlineData("ZZ99")]
    [InlineData("NZ 256 6345")]
    [InlineData("NZ2563A")]
    [InlineData("91 0")]
    [InlineData("NaN NaN")]
    [InlineData("1e999 2")]
    [InlineData("54.9")]
    [InlineData("54.9 -1.6 7")]
    [InlineData("'; DROP TABLE record; --")]
    [InlineData("🐝2563")]
    public async Task ABadPlaceIsExplained(string place)
    {
        var run = await CommandRun.OfAsync("grid", place, "--json");
        Assert.Equal((1, false, place), (run.Exit, (bool)run.Json["ok"]!, run.Json.Text("input")));
        Assert.NotEmpty(run.Json.Text("error"));
    }

    [Fact]
    public async Task AVeryLongPlaceIsExplained() => (await CommandRun.OfAsync("grid", "NZ" + new string('1', 1_000_000))).Failed(1);

    [Fact]
    public async Task WordsNameThePlaceOrTheFault()
    {
        var run = await CommandRun.OfAsync("grid", "NZ2563", "nonsense");
        Assert.Contains("easting 425000 m, northing 563000 m", run.Out, StringComparison.Ordinal);
        Assert.Contains("nonsense\n  ", run.Out.ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AMissingFileIsToldSo() => (await CommandRun.OfAsync("grid", "-i", "/nowhere/places.txt")).Failed(1, "/nowhere/places.txt");
}
