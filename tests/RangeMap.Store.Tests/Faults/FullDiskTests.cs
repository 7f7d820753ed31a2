using Dapper;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class FullDiskTests : IDisposable
{
    private readonly SomeStore _store = new();

    public void Dispose() => _store.Dispose();

    [Fact]
    public void AnImportThatRunsOutOfRoomFailsWithASentenceAndKeepsNothing()
    {
        _store.Import([Version(1)]);
        var before = LogicalDump.Of(_store.Database);
        using (var session = BeginWithoutRoom())
        {
            var problem = Assert.Throws<StoreException>(() => FillUp(session));
            Assert.Equal("There is no room left on the disk. Nothing was changed.", problem.Message);
            Assert.Throws<InvalidOperationException>(() => session.Keep(Version(9999)));
            Assert.Throws<InvalidOperationException>(() => session.Refuse(Refused(1)));
            Assert.Throws<InvalidOperationException>(() => session.Commit("h", "", new Dictionary<string, string>()));
        }

        Assert.Equal(before, LogicalDump.Of(_store.Database));
    }

    [Fact]
    public void RoomThatEndsAtTheCommitKeepsNothingEither()
    {
        _store.Import([Version(1)]);
        var before = LogicalDump.Of(_store.Database);
        using (var session = BeginWithoutRoom())
        {
            session.Keep(Version(2));
            Assert.Throws<StoreException>(() => session.Commit("h", new string('x', 10_000_000), new Dictionary<string, string>()));
        }

        Assert.Equal(before, LogicalDump.Of(_store.Database));
    }

    [Fact]
    public void AnUndoWithoutRoomFailsWithASentenceAndChangesNothing()
    {
        var batch = _store.Import([.. Enumerable.Range(1, 2000).Select(key => Version(key, FormattableString.Invariant($"SU{key / 100:00}{key % 100:00}")))]).Batch;
        var before = LogicalDump.Of(_store.Database);
        LimitPages(0);
        Assert.Throws<StoreException>(() => new BatchUndo(_store.Database, Clock).Run(batch));
        LimitPages(int.MaxValue);
        Assert.Equal(before, LogicalDump.Of(_store.Database));
    }

    /// <summary>The operating system refuses to write beyond a size: the same error as a broken disk.</summary>
    [Fact]
    public void AnImportWhoseWritesFailEndsWithASentenceAndKeepsNothing()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The limit is set with the shell of Linux.");
        _store.Import([Version(1)]);
        var before = LogicalDump.Of(_store.Database);
        using (var child = ChildImport.Start(["import", _store.Path, "large"], limitBlocks: 20_000))
            Assert.StartsWith("problem: The disk failed while the database was in use", child.Finish(), StringComparison.Ordinal);
        Assert.Equal(before, LogicalDump.Of(_store.Database));
    }

    /// <summary>A limit on the pages of the file gives the error that a full disk gives.</summary>
    private ImportSession BeginWithoutRoom()
    {
        LimitPages(20);
        return ImportSession.Begin(_store.Database, "invented", "invented.csv", Clock);
    }

    private static void FillUp(ImportSession session)
    {
        for (var key = 1; key < 5000; key++)
        {
            session.Keep(Version(key, version: 2));
            session.Refuse(Refused(key));
        }
    }

    /// <summary>Set on the one pooled connection, which the next user of the database gets.</summary>
    private void LimitPages(int more)
    {
        using var connection = _store.Database.Connect();
        var now = connection.ExecuteScalar<int>("PRAGMA page_count");
        connection.Execute($"PRAGMA max_page_count = {(more == int.MaxValue ? more : now + more)}");
    }
}
