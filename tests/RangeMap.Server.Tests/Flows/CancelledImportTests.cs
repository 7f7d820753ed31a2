using RangeMap.Store;
using RangeMap.TestKit;

namespace RangeMap.Server.Tests;

public sealed class CancelledImportTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task AnImportThatIsStoppedKeepsNothingAndCanBeMadeAgain()
    {
        var rows = Enumerable.Range(10, 80).Select(i => FormattableString.Invariant($"Inventa prima,2001-05-06,SU{i}"));
        var csv = _folder.Write("invented.csv", $"scientificName,date,gridReference\n{string.Join('\n', rows)}\n");
        var folder = DataFolder.Open(_folder.File("data"));
        var request = new ImportRequest(csv, "invented") { Stated = new() { NewTaxa = true } };
        using var stop = new CancellationTokenSource();
        var progress = new StopAt(20, stop);

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => ImportFile.RunAsync(folder, request, TimeProvider.System, progress, stop.Token));

        Assert.Empty(new BatchStore(folder.Database).ReadAll());
        Assert.Empty(new TaxonStore(folder.Database, TimeProvider.System).ReadTaxa());
        Assert.Equal(80, (await ImportFile.RunAsync(folder, request, TimeProvider.System)).Figures.Accepted);
    }

    private sealed class StopAt(long row, CancellationTokenSource stop) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value)
        {
            if (value.Rows >= row)
                stop.Cancel();
        }
    }
}
