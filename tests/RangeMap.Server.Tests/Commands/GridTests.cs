namespace RangeMap.Server.Tests.Commands;

public sealed class GridTests
{
    private static readonly string[] Agreed = ["input", "ok", "system", "name", "size", "easting", "northing", "latitude", "longitude", "squares", "error",
        "nation", "kmFromLand", "landShare", "neighbours", "otherSystems", "outline"];

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
        Assert.Equal([true, false, true, true, true, true], run.JsonLines.Select(line => (bool)line["ok"]!));
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

    [Theory]
    // Positions from memory to about 0.02 degree, not verified; none within 1 km of the sea or a border but those at sea.
    [InlineData("NN166712", "Scotland", false, 0.98)] // Ben Nevis; the 10 km square reaches Loch Linnhe, an arm of the sea
    [InlineData("52.48 -1.89", "England", false, 1.0)]
    [InlineData("J3374", "Northern Ireland", false, null)]
    [InlineData("ITM715734", "Ireland", false, null)]
    [InlineData("WV6549", "Jersey", false, null)]
    [InlineData("54.2 -5.2", null, true, 0.0)] // between Ireland and Man
    [InlineData("48.85 2.35", null, false, null)] // Paris
    [InlineData("NZ", null, true, null)]
    public async Task ThePlaceIsInItsNationOrAtSea(string place, string? nation, bool atSea, double? landShare)
    {
        var json = (await CommandRun.OfAsync("grid", place, "--json")).Json;
        Assert.Equal((nation, atSea), ((string?)json["nation"], json["kmFromLand"] is not null));
        if (landShare is { } share)
            Assert.Equal(share, (double)json["landShare"]!, 0.01);
    }

    [Fact]
    public async Task NeighboursAreNamedAcrossTheLettersOfTheLattice()
    {
        var json = (await CommandRun.OfAsync("grid", "NZ0090", "--json")).Json;
        Assert.Equal(["NZ0091", "NZ0191", "NZ0190", "NZ0189", "NZ0089", "NY9989", "NY9990", "NY9991"], json["neighbours"]!.AsArray().Select(name => (string)name!));
    }

    [Theory]
    [InlineData("TQ3080", "British National Grid", "European,UTM")]
    [InlineData("J3374", "Irish Grid", "Irish Transverse,European,UTM")]
    [InlineData("NW3553", "British National Grid", "Irish Grid,Irish Transverse,European,UTM")]
    [InlineData("WV6548", "Channel Islands grid (ED50)", "Channel Islands grid (WGS84),European,UTM")]
    [InlineData("52.15 5.39", "UTM, northern hemisphere (MGRS)", "Dutch,European")]
    [InlineData("-33.87 151.21", "UTM, southern hemisphere (MGRS)", "")]
    public async Task EveryOtherGridInUseThereIsTold(string place, string own, string others)
    {
        var json = (await CommandRun.OfAsync("grid", place, "--json")).Json;
        Assert.Equal(own, json.Text("system"));
        var told = json["otherSystems"]!.AsArray().Select(other => other!.Text("system")).ToList();
        var expected = others.Split(',', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(expected.Length, told.Count);
        Assert.All(expected.Zip(told), pair => Assert.StartsWith(pair.First, pair.Second, StringComparison.Ordinal));
    }

    [Fact]
    public async Task TheOutlineIsAClosedGeoJsonRingWhenAskedFor()
    {
        Assert.Null((await CommandRun.OfAsync("grid", "TQ38", "--json")).Json["outline"]);
        var outline = (await CommandRun.OfAsync("grid", "TQ38", "--json", "--outline")).Json["outline"]!;
        Assert.Equal("Polygon", outline.Text("type"));
        var ring = outline["coordinates"]![0]!.AsArray();
        Assert.Equal(9, ring.Count);
        Assert.Equal(ring[0]!.ToJsonString(), ring[8]!.ToJsonString());
        Assert.All(ring, point => Assert.Equal((51.5, -0.1), ((double)point![1]!, (double)point[0]!), new Near(0.1)));
    }

    [Theory]
    [InlineData("30U 565145", "easting and northing")]
    [InlineData("30UZZ 99 12", "ZZ is no 100 km square of 30U")]
    [InlineData("333831 374015", "British National Grid or Irish Grid")]
    [InlineData("91N 2W", "latitude")]
    [InlineData("54.9", "latitude")]
    public async Task TheReasonFitsWhatWasMeant(string place, string reason) =>
        Assert.Contains(reason, (await CommandRun.OfAsync("grid", place, "--json")).Json.Text("error"), StringComparison.Ordinal);

    [Fact]
    public async Task WordsTellWhatLiesRound()
    {
        var run = await CommandRun.OfAsync("grid", "TQ3080", "54.2 -5.2", "30UXC9910");
        Assert.Contains("England; TQ38 is all land", run.Out, StringComparison.Ordinal);
        Assert.Contains("beside TQ3080: TQ3081 N, TQ3181 NE, TQ3180 E,", run.Out, StringComparison.Ordinal);
        Assert.Matches(@"at sea, 2\d km from land; J83 is all sea", run.Out);
        Assert.Contains("zone 30, easting 699000 m, northing 5710000 m", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task WordsNameThePlaceOrTheFault()
    {
        var run = await CommandRun.OfAsync("grid", "NZ2563", "nonsense");
        Assert.Contains("easting 425000 m, northing 563000 m", run.Out, StringComparison.Ordinal);
        Assert.Contains("nonsense\n  ", run.Out.ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AMissingFileIsToldSo() => (await CommandRun.OfAsync("grid", "-i", "/nowhere/places.txt")).Failed(1, "/nowhere/places.txt");

    /// <summary>Compares two places in degrees.</summary>
    private sealed class Near(double degrees) : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) a, (double, double) b) => Math.Abs(a.Item1 - b.Item1) < degrees && Math.Abs(a.Item2 - b.Item2) < 2 * degrees;

        public int GetHashCode((double, double) place) => 0;
    }
}
