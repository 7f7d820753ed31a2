namespace RangeMap.Server.Tests.Commands;

/// <summary>Exports by command, and what is exported read back.</summary>
public sealed class ExportTests
{
    private const string Table = """"
        occurrenceID,scientificName,eventDate,gridReference,recordedBy,lifeStage,individualCount,locality,identificationVerificationStatus
        w1,Inventa prima,1995-06-01,NZ256634,A. Invented,adult,3,"=Hill, ""North""",confirmed
        w2,Inventa prima,2005-06-01/2005-06-20,NZ2563,A. Invented,,,,
        w3,Inventa secunda,2012,SU1234,B. Invented,larva,,-5,
        w4,Inventa secreta,2013-06-01,NZ211612,B. Invented,,,,
        w5,Inventa prima,2014-06-01,WV6548,B. Invented,,,,
        """";

    [Fact]
    public async Task AnArchiveReadsBackRowForRow()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        Assert.Equal(0, (await data.ImportTableAsync(Table)).Int("refused"));
        var archive = data.Beside("out.zip");
        Assert.Equal(0, (await data.RunAsync("export", "--format", "dwca", "--quality", "all", "--in-full", "-o", archive)).Exit);
        using var other = await DataDirectory.WithTaxaAsync();
        var read = (await other.ImportAsync(archive, "--json")).Json;
        Assert.Equal((5, 0), (read.Int("accepted"), read.Int("refused")));
        Assert.Equal(await data.AllMapsAsync(), await other.AllMapsAsync());
        var again = other.Beside("again.csv");
        Assert.Equal(0, (await other.RunAsync("export", "--what", "records", "--quality", "all", "--in-full", "-o", again)).Exit);
        var first = data.Beside("first.csv");
        Assert.Equal(0, (await data.RunAsync("export", "--what", "records", "--quality", "all", "--in-full", "-o", first)).Exit);
        Assert.Equal(WithoutNames(first), WithoutNames(again));
    }

    [Fact]
    public async Task CellsThatLookLikeFormulasAreMadeSafeAndNumbersStayNumbers()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        await data.ImportTableAsync(Table);
        var file = data.Beside("records.csv");
        Assert.Equal(0, (await data.RunAsync("export", "--what", "records", "--quality", "all", "--in-full", "-o", file)).Exit);
        var text = await File.ReadAllTextAsync(file);
        Assert.Contains("\"'=Hill, \"\"North\"\"\"", text, StringComparison.Ordinal);
        Assert.Contains(",-5,false", text, StringComparison.Ordinal);
        Assert.True(File.Exists(file + "-metadata.json"));
    }

    [Fact]
    public async Task TheCubeCountsWhatWasCountedByHand()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        await data.ImportTableAsync(Table);
        var file = data.Beside("cube.csv");
        Assert.Equal(0, (await data.RunAsync("export", "--taxon", "prima", "-o", file)).Exit);
        Assert.Equal(
            [
                "prima,Inventa prima,species,false,NZ26,GB,10km,1995,1,1,1,71,1995-06-01,1995-06-01",
                "prima,Inventa prima,species,false,NZ26,GB,10km,2005,1,0,0,707,2005-06-01,2005-06-20",
                "prima,Inventa prima,species,false,WV64,CI,10km,2014,1,0,1,707,2014-06-01,2014-06-01",
            ],
            (await File.ReadAllLinesAsync(file)).Skip(1));
    }

    [Fact]
    public async Task BadQuestionsAreBadArgumentsAndLeaveNoFile()
    {
        using var data = await DataDirectory.WithTaxaAsync();
        var file = data.Beside("none.csv");
        (await data.RunAsync("export", "--bbox", "1,2,3", "-o", file)).Failed(2, "no box");
        (await data.RunAsync("export", "--taxon", "nulla", "-o", file)).Failed(1, "nulla");
        (await data.RunAsync("export", "--edition", "12345678", "-o", file)).Failed(1, "no frozen edition");
        (await data.RunAsync("tiles", "-o", file)).Failed(2, "--all");
        (await data.RunAsync("tiles", "prima", "-o", file)).Failed(1, "no square");
        Assert.False(File.Exists(file));
    }

    private static IEnumerable<string> WithoutNames(string file) => File.ReadAllLines(file).Select(line => line[(line.IndexOf(',', StringComparison.Ordinal) + 1)..]).Order(StringComparer.Ordinal);
}
