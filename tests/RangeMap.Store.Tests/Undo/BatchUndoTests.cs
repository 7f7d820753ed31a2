using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class BatchUndoTests : IDisposable
{
    /// <summary>What an undo leaves on purpose: the batch with its rows and refusals, the edition, and names of people and places.</summary>
    private static readonly string[] Stays = ["batch", "source_block", "refusal", "edition", "person", "word", "dataset", "cube_segment", "visit_segment"];

    private readonly SomeStore _store = new();

    public void Dispose() => _store.Dispose();

    [Fact]
    public void AnImportTakenBackLeavesTheDataAsTheyWere()
    {
        _store.Import([Version(1), Version(2, "SU99")]);
        var (before, cubes, edition) = (LogicalDump.Of(_store.Database, Stays), FromRecords.Cubes(_store.Database), _store.Edition);
        var second = _store.Import([Version(2, "SU11", version: 2), Version(3, taxon: 2)], [Refused(3)]);

        var undone = Undo(second.Batch);

        Assert.Equal((1, 1, 0), (undone.Removed, undone.Restored, undone.ChangedLater));
        Assert.Equal(before, LogicalDump.Of(_store.Database, Stays));
        Assert.Equal(cubes, FromRecords.Cubes(_store.Database));
        Assert.Equal(edition + 2, _store.Edition);
        AssertWhole();
    }

    [Fact]
    public void TheBatchStaysMarkedWithItsRowsAndRefusals()
    {
        var figures = _store.Import([Version(1)], [Refused(2)]);
        Undo(figures.Batch);
        var batches = new BatchStore(_store.Database);
        Assert.Equal("2020-02-03T04:05:06Z", batches.Read(figures.Batch)!.UndoneAt);
        Assert.Equal("row 1 as it was sent", batches.SourceRow(figures.Batch, 1));
        Assert.Single(batches.Refusals(figures.Batch));
    }

    [Fact]
    public void AnImportIsTakenBackOnce()
    {
        var batch = _store.Import([Version(1)]).Batch;
        Undo(batch);
        var before = LogicalDump.Of(_store.Database);
        var problem = Assert.Throws<StoreException>(() => Undo(batch));
        Assert.Contains("taken back already", problem.Message, StringComparison.Ordinal);
        Assert.Equal(before, LogicalDump.Of(_store.Database));
    }

    [Fact]
    public void AnImportThatNeverWasIsRefused() =>
        Assert.Equal("There is no import number 7.", Assert.Throws<StoreException>(() => Undo(7)).Message);

    [Fact]
    public void ARecordThatALaterImportChangedStaysAsThatOneLeftIt()
    {
        var first = _store.Import([Version(1), Version(2)]);
        _store.Import([Version(1, "SU5678", version: 2)]);
        var undone = Undo(first.Batch);
        Assert.Equal((1, 0, 1), (undone.Removed, undone.Restored, undone.ChangedLater));
        Assert.Equal(["SU5678"], Squares());
        AssertWhole();
    }

    [Fact]
    public void AVersionOfAnImportTakenBackDoesNotReturnWhenTheLaterOneGoesToo()
    {
        var batches = Enumerable.Range(1, 3).Select(i => _store.Import([Version(1, $"SU{i}{i}", version: i)]).Batch).ToList();
        Undo(batches[1]);
        Assert.Equal(["SU33"], Squares());
        Undo(batches[2]);
        Assert.Equal(["SU11"], Squares());
        AssertWhole();
        Undo(batches[0]);
        Assert.Empty(Squares());
        AssertWhole();
    }

    [Fact]
    public void ImportsTakenBackInTheirOwnOrderLeaveNothing()
    {
        var batches = Enumerable.Range(1, 3).Select(i => _store.Import([Version(1, $"SU{i}{i}", version: i)]).Batch).ToList();
        batches.ForEach(batch => Undo(batch));
        Assert.Empty(Squares());
        AssertWhole();
    }

    [Fact]
    public void AFileMayBeImportedAgainAfterItsUndo()
    {
        var first = _store.Import([Version(1)], [Refused(2)], hash: "h");
        var before = FromRecords.Cubes(_store.Database);
        Undo(first.Batch);
        var again = _store.Import([Version(1)], [Refused(2)], hash: "h");
        Assert.NotEqual(first.Batch, again.Batch);
        Assert.Equal(1, again.Accepted);
        Assert.Equal(before, FromRecords.Cubes(_store.Database));
        AssertWhole();
    }

    [Fact]
    public void AFileOfRefusalsOnlyMayBeTakenBackAndSentAgain()
    {
        var edition = _store.Edition;
        var first = _store.Import([], [Refused(1)], hash: "h");
        Undo(first.Batch);
        Assert.Equal(edition, _store.Edition);
        Assert.NotEqual(first.Batch, _store.Import([], [Refused(1)], hash: "h").Batch);
    }

    [Fact]
    public void LaterImportsThatRepeatedRowsAreNamed()
    {
        var first = _store.Import([Version(1)]);
        var later = _store.Import([Version(1), Version(2)]);
        Assert.Equal([later.Batch], Undo(first.Batch).RepeatedBy);
        Assert.Equal(1, _store.Import([Version(1), Version(2)]).Accepted);
        AssertWhole();
    }

    private UndoneBatch Undo(long batch) => new BatchUndo(_store.Database, Clock).Run(batch);

    private IEnumerable<string> Squares() =>
        FromRecords.Cubes(_store.Database).Values.SelectMany(cells => cells).Select(cell => Grids.Square.FromCode(cell.SquareCode).ToString());

    private void AssertWhole()
    {
        FromRecords.AssertAgree(_store.Database);
        Assert.Empty(new StoreVerification(_store.Database).FindProblems());
    }
}
