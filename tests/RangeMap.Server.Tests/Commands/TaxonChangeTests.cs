namespace RangeMap.Server.Tests.Commands;

public sealed class TaxonChangeTests : IAsyncLifetime
{
    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference,caste
        a,Inventa tertia,2005-06-01,NZ2563,queen
        b,Inventa tertia,2006-06-01,SU1234,worker
        """;

    private DataDirectory _data = null!;

    public async ValueTask InitializeAsync()
    {
        _data = await DataDirectory.WithTaxaAsync();
        Assert.Equal(2, (await _data.ImportTableAsync(Table)).Int("accepted"));
    }

    public ValueTask DisposeAsync()
    {
        _data.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task ASplitIsMadeToldAndTakenBack()
    {
        var before = await _data.AllMapsAsync();
        var split = await _data.RunAsync("taxon", "split", "tertia", "--rule", "prima: squares=NZ; stage=queen", "--reason", "A revision.", "--by", "T. Invented");
        Assert.Equal(0, split.Exit);
        Assert.Contains("1 records were identified afresh", split.Out, StringComparison.Ordinal);
        Assert.NotEqual(before, await _data.AllMapsAsync());
        Assert.Contains("T. Invented: Inventa tertia is the aggregate of Inventa prima from now on. A revision.", (await _data.RunAsync("taxon", "changes")).Out, StringComparison.Ordinal);
        Assert.Equal(0, (await _data.RunAsync("taxon", "undo", "1")).Exit);
        Assert.Equal(before, await _data.AllMapsAsync());
        Assert.Equal(0, (await _data.RunAsync("verify")).Exit);
    }

    [Fact]
    public async Task AListThatCallsATaxonASynonymMergesItAndItsRecordsFollow()
    {
        var list = DataDirectory.TaxonList.Replace("tertia,Inventa tertia,third inventa,species,,", "tertia,Inventa tertia,third inventa,species,aperta,", StringComparison.Ordinal)
            .Replace("trina,Inventa trina,,species,tertia,", "trina,Inventa trina,,species,aperta,", StringComparison.Ordinal);
        var loaded = await _data.RunAsync("taxa", _data.Write("new.csv", list));
        Assert.Equal(0, loaded.Exit);
        Assert.Contains("Inventa tertia is part of Inventa aperta from now on. 2 records follow", loaded.Out, StringComparison.Ordinal);
        var again = await _data.ImportTableAsync(Table.Replace("\na,", "\nc,", StringComparison.Ordinal));
        Assert.Equal((1, 0), (again.Int("accepted"), again.Int("refused")));
        Assert.Equal(0, (await _data.RunAsync("verify")).Exit);
    }

    [Theory]
    [InlineData("")]
    [InlineData(": stage=queen")]
    [InlineData("prima: colour=red")]
    [InlineData("prima: squares=")]
    [InlineData("prima: squares=ZZZ")]
    [InlineData("prima: from=yesterday")]
    public async Task ARuleThatIsNotUnderstoodIsRefusedWithTheReason(string rule)
    {
        var run = await _data.RunAsync("taxon", "split", "tertia", "--rule", rule);
        Assert.Equal(2, run.Exit);
        Assert.Empty(run.Out);
        Assert.NotEmpty(run.Error);
    }

    [Fact]
    public async Task ATaxonThatIsNotThereIsToldSo()
    {
        var run = await _data.RunAsync("taxon", "merge", "nulla", "tertia");
        Assert.Equal(1, run.Exit);
        Assert.Contains("no taxon \"nulla\"", run.Error, StringComparison.Ordinal);
    }
}
