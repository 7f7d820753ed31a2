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

    private void KillAt(int step, int millisecondsLater)
    {
        using var child = ChildImport.Start(["import", _store.Path, "large"]);
        Assert.True(child.WaitFor(step.ToString(CultureInfo.InvariantCulture)));
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
