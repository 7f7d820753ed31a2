namespace RangeMap.Server.Tests.Commands;

public sealed class ImportTests
{
    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference,recordedBy
        r1,Inventa prima,2005-06-01,NZ2563,A. Invented
        r2,Inventa secunda,2006-06-01,NZ2664,A. Invented
        r3,Inventa terta,2006-06-02,NZ2664,A. Invented
        """;

    [Fact]
    public async Task MachineOutputHasTheAgreedMembers()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var run = await data.ImportAsync(data.Write("a.csv", Table), "--json");
        Assert.Equal(3, run.Exit);
        var json = run.Json;
        Assert.Equal((1, "test", 3, 2, 1, 0, 0), (json.Int("batch"), (string)json["dataset"]!, json.Int("read"), json.Int("accepted"), json.Int("refused"), json.Int("updated"), json.Int("unchanged")));
        Assert.True((double)json["seconds"]! >= 0);
        Assert.NotNull(json["doubts"]);
        Assert.Equal("eventDate", (string)json["mapping"]!["eventDate"]!);
    }

    [Fact]
    public async Task WordsTellTheCountsAndHowToGetTheRefusedRows()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var run = await data.ImportAsync(data.Write("a.csv", Table));
        Assert.Contains("3 rows read", run.Out, StringComparison.Ordinal);
        Assert.Contains("2 new, 0 changed, 0 known already, 1 refused", run.Out, StringComparison.Ordinal);
        Assert.Contains("rangemap refusals 1", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheSameFileTwiceChangesNothing()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var first = await data.ImportTableAsync(Table);
        var (maps, edition) = (await data.AllMapsAsync(), Edition(data));
        var second = await data.ImportTableAsync(Table);
        Assert.Equal((0, 0, 2, 1), (second.Int("accepted"), second.Int("updated"), second.Int("unchanged"), second.Int("refused")));
        Assert.Equal(first.Int("batch"), second.Int("batch"));
        Assert.Equal(edition, Edition(data));
        Assert.Equal(maps, await data.AllMapsAsync());
    }

    [Fact]
    public async Task AChangedRowOfTheSameOccurrenceReplacesTheOldOne()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        await data.ImportTableAsync(Table);
        var second = await data.ImportTableAsync("occurrenceID,scientificName,eventDate,gridReference,recordedBy\nr1,Inventa prima,2005-06-01,SU1234,A. Invented\n");
        Assert.Equal((0, 1, 0), (second.Int("accepted"), second.Int("updated"), second.Int("unchanged")));
        Assert.Equal(["SU13"], (await data.CountsAsync("prima", "10km")).Keys.Select(key => key.Square));
    }

    [Fact]
    public async Task ARepeatedOccurrenceWithinAFileIsKeptWithADoubtAndFoundAgain()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        const string twice = "occurrenceID,scientificName,eventDate,gridReference\nr1,Inventa prima,2005-06-01,NZ2563\nr1,Inventa prima,2006-06-01,NZ2563\n";
        var first = await data.ImportTableAsync(twice);
        Assert.Equal((2, 1), (first.Int("accepted"), (int)first["doubts"]!["repeatedRow"]!));
        Assert.Equal(2, (await data.ImportTableAsync(twice)).Int("unchanged"));
    }

    [Fact]
    public async Task TheSameIdentifierInTwoDataSetsIsTwoRecords()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var file = data.Write("a.csv", Table);
        await data.RunAsync("import", file, "--dataset", "north");
        var other = await data.RunAsync("import", file, "--dataset", "south", "--json");
        Assert.Equal((2, 0), (other.Json.Int("accepted"), other.Json.Int("unchanged")));
        Assert.Equal(2, (await data.CountsAsync("prima", "10km"))[("NZ26", "../..")]);
    }

    [Fact]
    public async Task ADryRunTellsTheSameAndKeepsNothing()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var edition = Edition(data);
        var dry = await data.ImportTableAsync(Table, "--dry-run", "--new-taxa");
        Assert.Equal((3, true), (dry.Int("accepted"), (bool)dry["dryRun"]!));
        Assert.Equal(edition, Edition(data));
        Assert.Empty(await data.CountsAsync("prima", "10km"));
        (await data.RunAsync("presence", "Inventa terta")).Failed(1, "Inventa terta");
        Assert.Equal(1, (await data.ImportTableAsync(Table)).Int("batch"));
    }

    [Fact]
    public async Task AMappingFileNamesTheColumns()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var mapping = data.Write("m.json", """{"columns":{"what":"scientificName","when":"eventDate","where":"gridReference"},"dateOrder":"dmy"}""");
        var json = await data.ImportTableAsync("what,when,where\nInventa prima,3/6/1998,NZ2563\n", "--mapping", mapping);
        Assert.Equal((1, "gridReference"), (json.Int("accepted"), (string)json["mapping"]!["where"]!));
        Assert.Single(await data.CountsAsync("prima", "10km", "1998-06"));
    }

    [Fact]
    public async Task ABrokenMappingFileStopsTheImport()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var file = data.Write("a.csv", Table);
        (await data.ImportAsync(file, "--mapping", data.Write("m.json", "{\"columns\":"))).Failed(1, "mapping file");
        (await data.ImportAsync(file, "--mapping", data.Write("n.json", """{"columns":{"nowhere":"eventDate"}}"""))).Failed(1, "nowhere");
        (await data.ImportAsync(file, "--mapping", data.Beside("absent.json"))).Failed(1, "absent.json");
        Assert.Empty(await data.CountsAsync("prima", "10km"));
    }

    [Fact]
    public async Task NewTaxaAreAddedWhenAllowed()
    {
        using var data = new DataDirectory();
        var refused = await data.ImportTableAsync(Table);
        Assert.Equal((0, 3), (refused.Int("accepted"), refused.Int("refused")));
        var added = await data.ImportTableAsync(Table, "--new-taxa");
        Assert.Equal((3, 0), (added.Int("accepted"), added.Int("refused")));
        Assert.Single(await data.CountsAsync("Inventa terta", "1km"));
    }

    [Fact]
    public async Task MendedRefusalsComeIn()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var refusals = data.Beside("refusals.csv");
        await data.ImportAsync(data.Write("a.csv", Table), "--refusals", refusals);
        var text = await File.ReadAllTextAsync(refusals);
        Assert.Contains("Nearest: Inventa tertia", text, StringComparison.Ordinal);
        var mended = data.Write("mended.csv", text.Replace("Inventa terta,", "Inventa tertia,", StringComparison.Ordinal));
        var json = (await data.ImportAsync(mended, "--json")).Json;
        Assert.Equal((1, 1, 0), (json.Int("read"), json.Int("accepted"), json.Int("refused")));
        // The whole file, mended at its source, holds the same record.
        Assert.Equal(3, (await data.ImportTableAsync(Table.Replace("terta", "tertia", StringComparison.Ordinal))).Int("unchanged"));
    }

    [Fact]
    public async Task SeveralFilesComeInOneByOne()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var (a, b) = (data.Write("a.csv", Table), data.Write("b.csv", Table.Replace("r1,", "r9,", StringComparison.Ordinal)));
        var run = await data.RunAsync("import", a, b, "--dataset", "test", "--json");
        Assert.Equal([2, 1], run.JsonLines.Select(line => line.Int("accepted")));
        Assert.Equal(3, run.Exit);
        (await data.RunAsync("import", a, b, "--dataset", "test", "--refusals", data.Beside("r.csv"))).Failed(2, "--refusals");
        (await data.RunAsync("import", a, "--dataset", "test", "--refusals", a)).Failed(2, "written over");
        Assert.Equal(Table, await File.ReadAllTextAsync(a));
    }

    [Fact]
    public async Task AStoppedImportKeepsNothing()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var maps = await data.AllMapsAsync();
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        var run = await CommandRun.OfAsync("", stop.Token, "import", data.Write("a.csv", Table), "--dataset", "test", "--data", data.Data);
        run.Failed(1, "stopped");
        Assert.Equal(maps, await data.AllMapsAsync());
        Assert.Equal(1, (await data.ImportTableAsync(Table)).Int("batch"));
    }

    private static long Edition(DataDirectory data) => new CurrentData(data.Open().Database, FixedClock.Winter2026).Now().Edition.Number;
}
