using System.Globalization;
using Dapper;
using RangeMap.ImportProcess;

namespace RangeMap.Store.Tests;

/// <summary>An import that is killed leaves nothing; it needs no clean-up and may simply be run again.</summary>
public sealed class KilledImportTests : IDisposable
{
    private readonly SomeStore _store = new();

    public void Dispose() => _store.Dispose();

    /// <summary>Steps at which it is killed: early, in memory only; late, when much was written already; and twice in the commit.</summary>
    [Fact]
    public void AKilledImportLeavesTheStateBeforeOrIsDoneWhole()
    {
        _store.Import([SomeStore.Version(1), SomeStore.Version(2)], [SomeStore.Refused(3)]);
        var before = LogicalDump.Of(_store.Database);
        var chance = new Random(20);
        foreach (var step in (int[])[0, chance.Next(1, 30), chance.Next(70, LargeImport.Steps), LargeImport.Steps, LargeImport.Steps])
        {
            KillAt(step, millisecondsLater: chance.Next(0, 60));
            _store.Reopen();
            AssertSound();
            if (step == LargeImport.Steps && new BatchStore(_store.Database).ReadAll().Count == 2)
                return;
            Assert.Equal(before, LogicalDump.Of(_store.Database));
        }

        Assert.Equal(LargeImport.Steps * 20, LargeImport.Run(_store.Database, "large", _ => { }).Accepted);
        AssertSound();
    }

    [Fact]
    public void AnImportKilledAtAnyOfFiftyMomentsIsThereWholeOrNotAtAll()
    {
        _store.Import([SomeStore.Version(1), SomeStore.Version(2)]);
        var chance = new Random(22);
        var (whole, absent) = (0, 0);
        for (var moment = 0; moment < 50; moment++)
        {
            var (before, batches) = (LogicalDump.Of(_store.Database), new BatchStore(_store.Database).ReadAll().Count);
            // A third of them in or about the commit, where half an import would be made; some surely after it.
            if (moment % 10 == 9)
                KillAt("done", 0, "import-small");
            else
                KillAt(moment % 3 == 0 ? LargeImport.Steps : chance.Next(LargeImport.Steps), chance.Next(0, 60), "import-small");
            _store.Reopen();
            FromRecords.AssertAgree(_store.Database);
            if (new BatchStore(_store.Database).ReadAll().Count == batches)
            {
                Assert.Equal(before, LogicalDump.Of(_store.Database));
                absent++;
                continue;
            }

            whole++;
            var undone = new BatchUndo(_store.Database, SomeStore.Clock).Run(batches + 1);
            Assert.Equal(LargeImport.Steps * 20, undone.Removed);
        }

        Assert.True(whole > 0 && absent > 0, $"{whole} of the kills came after the commit and {absent} before; the moments must lie on both sides.");
    }

    [Fact]
    public void AFirstImportThatIsKilledCanBeRunAgain()
    {
        var before = LogicalDump.Of(_store.Database);
        KillAt(80, millisecondsLater: 20);
        _store.Reopen();
        Assert.Equal(before, LogicalDump.Of(_store.Database));
        using (var again = ChildImport.Start(["import", _store.Path, "large"]))
            Assert.Equal("done", again.Finish());
        FromRecords.AssertAgree(_store.Database);
        Assert.Equal(0, LargeImport.Run(_store.Database, "large", _ => { }).Accepted);
    }

    [Fact]
    public void AProgramKilledWhileItMakesTheDatabaseLeavesOneThatOpens()
    {
        var chance = new Random(21);
        for (var i = 0; i < 4; i++)
        {
            using var folder = new TestKit.TemporaryFolder();
            using (var child = ChildImport.Start(["open", folder.File("store.sqlite")]))
            {
                child.WaitFor("opening");
                Thread.Sleep(chance.Next(0, 80));
                child.Kill();
            }

            Assert.Equal(0, new Editions(Database.Open(folder.File("store.sqlite"))).Current().Number);
        }
    }

    private void KillAt(int step, int millisecondsLater, string how = "import") => KillAt(step.ToString(CultureInfo.InvariantCulture), millisecondsLater, how);

    private void KillAt(string said, int millisecondsLater, string how)
    {
        using var child = ChildImport.Start([how, _store.Path, "large"]);
        Assert.True(child.WaitFor(said));
        Thread.Sleep(millisecondsLater);
        child.Kill();
    }

    private void AssertSound()
    {
        using var connection = _store.Database.Connect();
        Assert.Equal("ok", connection.ExecuteScalar<string>("PRAGMA integrity_check"));
        FromRecords.AssertAgree(_store.Database);
    }
}
