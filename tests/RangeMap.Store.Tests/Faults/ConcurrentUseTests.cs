using RangeMap.ImportProcess;
using RangeMap.TestKit;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class ConcurrentUseTests : IDisposable
{
    private readonly SomeStore _store = new();

    public void Dispose() => _store.Dispose();

    [Fact]
    public void WhileAnImportRunsMapsAreAsBeforeIt()
    {
        _store.Import([Version(1)]);
        var before = LogicalDump.Of(_store.Database);
        using var session = ImportSession.Begin(_store.Database, "invented", "invented.csv", Clock);
        Fill(session, [.. Enumerable.Range(1, 200).Select(key => Version(key, "SU99", version: 2))], []);
        Assert.Equal(before, LogicalDump.Of(_store.Database));
        Assert.Single(_store.Cubes.Read([1]).Cells.ToArray());

        session.Commit("h", "", new Dictionary<string, string>());
        Assert.Equal(200, Assert.Single(_store.Cubes.Read([1]).Cells.ToArray()).Counts.All);
    }

    [Fact]
    public async Task ImportsAtOnceEndOneAfterTheOtherAndLoseNothing()
    {
        var imports = Enumerable.Range(0, 4).Select(i => Task.Run(() =>
            _store.Import([.. Enumerable.Range(i * 50, 100).Select(key => Version(key, taxon: 1 + key % 3))]))).ToList();
        var figures = await Task.WhenAll(imports);
        Assert.Equal(250, figures.Sum(figure => figure.Accepted));
        Assert.Equal(150, figures.Sum(figure => figure.Unchanged));
        FromRecords.AssertAgree(_store.Database);
        Assert.Empty(new StoreVerification(_store.Database).FindProblems());
    }

    [Fact]
    public void ImportsOfTwoProcessesEndOneAfterTheOtherAndLoseNothing()
    {
        using var one = ChildImport.Start(["import", _store.Path, "one"]);
        using var two = ChildImport.Start(["import", _store.Path, "two"]);
        Assert.Equal(["done", "done"], [one.Finish(), two.Finish()]);
        Assert.Equal([1, 1], new BatchStore(_store.Database).ReadAll().Select(batch => (int)(batch.Accepted / (LargeImport.Steps * 20))));
        FromRecords.AssertAgree(_store.Database);
    }

    [Fact]
    public void ProcessesThatMakeTheSameFolderAtOnceAllOpenIt()
    {
        using var folder = new TemporaryFolder();
        var children = Enumerable.Range(0, 3).Select(_ => ChildImport.Start(["open", folder.File("store.sqlite")])).ToList();
        Assert.All(children, child => Assert.Equal("done", child.Finish()));
        children.ForEach(child => child.Dispose());
        Assert.Equal(0, new Editions(Database.Open(folder.File("store.sqlite"))).Current().Number);
    }

    /// <summary>Threads start closer together than processes do.</summary>
    [Fact]
    public async Task ThreadsThatMakeTheSameFileAtOnceAllOpenIt()
    {
        for (var round = 0; round < 6; round++)
        {
            using var folder = new TemporaryFolder();
            using var start = new Barrier(4);
            var path = folder.File("store.sqlite");
            var threads = Enumerable.Range(0, 4).Select(_ => Task.Factory.StartNew(() =>
            {
                start.SignalAndWait();
                return new Editions(Database.Open(path)).Current().Number;
            }, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)).ToArray();
            Assert.All(await Task.WhenAll(threads), edition => Assert.Equal(0, edition));
        }
    }
}
