using RangeMap.Records;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class DecisionTests : IDisposable
{
    private readonly SomeStore _store = new();

    private DecisionStore Decisions => new(_store.Database, Clock);

    private DecisionHistory History => new(_store.Database);

    private RecordStore Records => new(_store.Database);

    public void Dispose() => _store.Dispose();

    [Fact]
    public void AConfirmedRecordCountsAsConfirmedAtOnce()
    {
        _store.Import([Version(1)]);
        var edition = _store.Edition;

        var answer = Decide(ReviewStatus.Confirmed);

        Assert.Equal((1L, 1), (answer.Number, answer.Changed));
        Assert.Equal(1, _store.Cubes.ReadAll()[1].Cells[0].Counts.Confirmed);
        Assert.Equal(edition + 1, _store.Edition);
        AssertWhole();
    }

    [Fact]
    public void ARejectedRecordLeavesTheMapAndComesBackWhenTheDecisionIsTakenBack()
    {
        _store.Import([Version(1)]);
        var before = FromRecords.Cubes(_store.Database);
        var rejected = Decide(ReviewStatus.Rejected);
        Assert.Empty(_store.Cubes.ReadAll());
        Assert.Empty(_store.Cubes.ReadVisits().Entries.ToArray());

        var reversal = Decisions.Reverse(rejected.Number!.Value, "R. Invented", "A slip of the hand.");

        Assert.Equal(1, reversal.Changed);
        Assert.Equal(before, FromRecords.Cubes(_store.Database));
        Assert.Null(Only().SentStatus);
        AssertWhole();
    }

    [Fact]
    public void AReidentifiedRecordKeepsTheNameThatWasSent()
    {
        _store.Import([Version(1)]);
        Decisions.Decide(new([Mark()], "R. Invented", "The wing veins say so.") { Status = ReviewStatus.Confirmed, TaxonId = "t2" });
        Assert.Equal((2L, 1L), (Only().Taxon, Only().SentTaxon));
        Assert.Equal([2], _store.Cubes.ReadAll().Keys);
        AssertWhole();
    }

    [Fact]
    public void TheHistoryTellsWhoWhenAndWhyAndKeepsEveryStep()
    {
        _store.Import([Version(1)]);
        var first = Decide(ReviewStatus.Doubtful);
        Decisions.Reverse(first.Number!.Value, "S. Invented", "Seen the photograph.");
        var history = History.Of(Only().Id);
        Assert.Equal(["R. Invented", "S. Invented"], history.Select(step => step.MadeBy));
        Assert.Equal([2L, null], history.Select(step => step.Status));
        Assert.Equal([null, first.Number], history.Select(step => step.Reverses));
        Assert.All(history, step => Assert.Equal("2020-02-03T04:05:06Z", step.MadeAt));
        Assert.Equal(first.Number + 1, History.Newest(10)[1].ReversedBy);
    }

    [Fact]
    public void ADecisionIsTakenBackOnce()
    {
        _store.Import([Version(1)]);
        var set = Decide(ReviewStatus.Doubtful).Number!.Value;
        Decisions.Reverse(set, "R. Invented", "");
        Assert.Contains("taken back already", Assert.Throws<StoreException>(() => Decisions.Reverse(set, "R. Invented", "")).Message, StringComparison.Ordinal);
        Assert.Contains("no decision number 77", Assert.Throws<StoreException>(() => Decisions.Reverse(77, "R. Invented", "")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ALaterDecisionIsNotTakenBackWithAnEarlierOne()
    {
        _store.Import([Version(1)]);
        var first = Decide(ReviewStatus.Doubtful).Number!.Value;
        Decide(ReviewStatus.Confirmed);
        var answer = Decisions.Reverse(first, "R. Invented", "");
        Assert.Equal((0, 1), (answer.Changed, answer.DecidedLater.Count));
        Assert.Equal(ReviewStatus.Confirmed, Only().ReviewStatus);
    }

    [Fact]
    public void ARecordThatChangedSinceItWasSeenIsLeftAlone()
    {
        _store.Import([Version(1)]);
        var seen = Mark();
        _store.Import([Version(1, "SU99", version: 2)]);
        var edition = _store.Edition;
        var answer = Decisions.Decide(new([seen], "R. Invented", "") { Status = ReviewStatus.Confirmed });
        Assert.Equal((0, 1, (long?)null), (answer.Changed, answer.ChangedMeanwhile.Count, answer.Number));
        Assert.Equal(edition, _store.Edition);
        Assert.Empty(History.Newest(10));
    }

    [Fact]
    public void ARecordThatIsNotThereIsToldAndTheOthersAreDecided()
    {
        _store.Import([Version(1)]);
        var answer = Decisions.Decide(new([new(new RecordId(1, 99), null), Mark()], "R. Invented", "") { Status = ReviewStatus.Confirmed });
        Assert.Equal((1, 1), (answer.Changed, answer.Missing.Count));
    }

    [Fact]
    public void ATaxonThatIsNotInTheListIsRefusedAndNothingIsDecided()
    {
        _store.Import([Version(1)]);
        Assert.Throws<StoreException>(() => Decisions.Decide(new([Mark()], "R. Invented", "") { TaxonId = "t99" }));
        Assert.Empty(History.Newest(10));
    }

    [Fact]
    public void ARecordWhosePlaceChangedAfterTheDecisionWaitsForAPersonAgain()
    {
        _store.Import([Version(1)]);
        Decide(ReviewStatus.Confirmed);
        _store.Import([Version(1, "SU99", version: 2)]);
        Assert.Equal((ReviewStatus.Unreviewed, Doubts.ChangedSinceReview), (Only().ReviewStatus, Only().Doubts));
        AssertWhole();
        Decide(ReviewStatus.Confirmed);
        Assert.Equal((ReviewStatus.Confirmed, Doubts.None), (Only().ReviewStatus, Only().Doubts));
    }

    [Fact]
    public void ARecordOfWhichOnlyTheRecorderChangedKeepsItsDecision()
    {
        _store.Import([Version(1)]);
        Decide(ReviewStatus.Confirmed);
        _store.Import([Version(1, version: 2) with { Recorder = "B. Invented" }]);
        Assert.Equal((ReviewStatus.Confirmed, "B. Invented"), (Only().ReviewStatus, Only().Recorder));
        AssertWhole();
    }

    [Fact]
    public void ADecisionComesBackWithTheVersionThatItWasMadeOn()
    {
        _store.Import([Version(1)]);
        Decide(ReviewStatus.Confirmed);
        var second = _store.Import([Version(1, "SU99", version: 2)]);
        new BatchUndo(_store.Database, Clock).Run(second.Batch);
        Assert.Equal((ReviewStatus.Confirmed, Doubts.None), (Only().ReviewStatus, Only().Doubts));
        AssertWhole();
    }

    [Fact]
    public void ADecisionOutlivesTheUndoOfItsImportAndComesBackWithTheRecord()
    {
        var first = _store.Import([Version(1)]);
        Decide(ReviewStatus.Rejected);
        new BatchUndo(_store.Database, Clock).Run(first.Batch);
        _store.Import([Version(1)]);
        Assert.Equal(ReviewStatus.Rejected, Only().ReviewStatus);
        Assert.Equal(ReviewStatus.Unreviewed, (ReviewStatus)Only().SentStatus!);
        Assert.Empty(_store.Cubes.ReadAll());
        AssertWhole();
    }

    [Fact]
    public void ManyRecordsAreDecidedTogetherAndTakenBackTogether()
    {
        _store.Import([.. Enumerable.Range(1, 100).Select(i => Version(i))]);
        var before = FromRecords.Cubes(_store.Database);
        var all = Records.Find(new() { Limit = 1000 }).Records.Select(r => new RecordMark(r.Id, r.Version)).ToList();
        var answer = Decisions.Decide(new(all, "R. Invented", "All from one trap with a broken label.") { Status = ReviewStatus.Rejected });
        Assert.Equal(100, answer.Changed);
        Assert.Empty(_store.Cubes.ReadAll());
        Decisions.Reverse(answer.Number!.Value, "R. Invented", "The label was found.");
        Assert.Equal(before, FromRecords.Cubes(_store.Database));
        AssertWhole();
    }

    private DecisionAnswer Decide(ReviewStatus status) => Decisions.Decide(new([Mark()], "R. Invented", "Because.") { Status = status });

    private RecordMark Mark() => new(Only().Id, Only().Version);

    private StoredRecord Only() => Assert.Single(Records.Find(new()).Records);

    private void AssertWhole()
    {
        FromRecords.AssertAgree(_store.Database);
        Assert.Empty(new StoreVerification(_store.Database).FindProblems());
    }
}
