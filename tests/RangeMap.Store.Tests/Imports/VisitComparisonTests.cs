using RangeMap.Records;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

/// <summary>An import is compared with what other imports brought: the same record sent twice, one recorder in two far places.</summary>
public sealed class VisitComparisonTests : IDisposable
{
    private readonly SomeStore _store = new();

    public void Dispose() => _store.Dispose();

    [Fact]
    public void TheSameTaxonPlaceDayAndRecorderInAnotherFileIsADoubtOfTheLaterRecord()
    {
        _store.Import([Version(1)]);
        var figures = _store.Import([Version(2), Version(3, "SU9999")], dataset: "other");
        Assert.Equal(1, figures.Doubts["duplicateRecord"]);
        Assert.Equal([Doubts.None, Doubts.DuplicateRecord, Doubts.None], DoubtsOfAll());
        AssertWhole();
    }

    [Theory]
    [InlineData("SU1235", "2001-05-06", 1, "A. Invented", null)]
    [InlineData("SU1234", "2001-05-07", 1, "A. Invented", null)]
    [InlineData("SU1234", "2001-05-06", 2, "A. Invented", null)]
    [InlineData("SU1234", "2001-05-06", 1, "B. Invented", null)]
    [InlineData("SU1234", "2001-05-06", 1, null, null)]
    [InlineData("SU1234", "2001-05-06", 1, "A. Invented", "queen")]
    public void ARecordThatDiffersInOneOfThemIsNone(string square, string day, int taxon, string? recorder, string? stage)
    {
        _store.Import([Version(1)]);
        _store.Import([Version(2, square, day, taxon) with { Recorder = recorder, Stage = stage }]);
        Assert.DoesNotContain(DoubtsOfAll(), doubts => doubts.HasFlag(Doubts.DuplicateRecord));
    }

    [Fact]
    public void ARecorderFarAwayOnTheSameDayIsADoubt()
    {
        _store.Import([Version(1)]);
        _store.Import([Version(2, "NZ2563"), Version(3, "SU9999")], dataset: "other");
        Assert.Equal([Doubts.None, Doubts.TwoFarPlaces, Doubts.None], DoubtsOfAll());
    }

    [Fact]
    public void ARecordThatIsCorrectedIsNotComparedWithWhatItSaidItself()
    {
        _store.Import([Version(1)]);
        _store.Import([Version(1, "NZ2563", version: 2)]);
        _store.Import([Version(1, "NZ2563", version: 3) with { Site = "Invented Heath" }]);
        Assert.Equal([Doubts.None], DoubtsOfAll());
        AssertWhole();
    }

    [Fact]
    public void AnImportTakenBackIsComparedWithNoMore()
    {
        var first = _store.Import([Version(1), Version(9, "TQ11", taxon: 3)]);
        _store.Import([Version(4, "HY11", taxon: 3)], dataset: "third");
        new BatchUndo(_store.Database, Clock).Run(first.Batch);
        _store.Import([Version(2)], dataset: "other");
        Assert.DoesNotContain(DoubtsOfAll(), doubts => doubts.HasFlag(Doubts.DuplicateRecord));
    }

    private IEnumerable<Doubts> DoubtsOfAll() => new RecordStore(_store.Database).Find(new()).Records.Select(record => record.Doubts);

    private void AssertWhole()
    {
        FromRecords.AssertAgree(_store.Database);
        Assert.Empty(new StoreVerification(_store.Database).FindProblems());
    }
}
