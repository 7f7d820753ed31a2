using RangeMap.Grids;
using RangeMap.Records;
using static RangeMap.Store.Tests.SomeStore;

namespace RangeMap.Store.Tests;

public sealed class RecordStoreTests : IDisposable
{
    private readonly SomeStore _store = new();

    private RecordStore Records => new(_store.Database);

    public void Dispose() => _store.Dispose();

    [Fact]
    public void ARecordIsReadBackByItsNameForGood()
    {
        _store.Import([Version(1) with { Stage = "worker", Site = "Invented Heath", Count = 3, Determiner = "D. Invented", Point = new(51.5, -1.25), UncertaintyMetres = 50, LengthMm = 14.5, Evidence = "photograph", Host = "Planta inventa", Behaviour = "nesting" }]);
        var record = Assert.Single(Records.Find(new()).Records);
        Assert.True(RecordId.TryParse(record.Id.ToString(), out var id));
        var again = Records.Read(id)!;
        Assert.Equal(record, again);
        Assert.Equal(("worker", "Invented Heath", 3L, "D. Invented"), (again.Stage, again.Site, again.Individuals, again.Determiner));
        Assert.Equal(("SU1234", new DateOnly(2001, 5, 6)), (again.Square.ToString(), again.Dates.First));
        Assert.Equal((51.5, 14.5), (again.Latitude!.Value, again.LengthMm!.Value));
        Assert.Equal(("photograph", "Planta inventa", "nesting"), (again.Evidence, again.Host, again.Behaviour));
    }

    [Theory]
    [InlineData("")]
    [InlineData("1")]
    [InlineData("1-2")]
    [InlineData("1-zz3b6e2d9e3779b97f4a7c15aaaaaaaa")]
    [InlineData("-1-00000000000000000000000000000001")]
    [InlineData("1-00000000000000000000000000000001-2")]
    public void WhatIsNoNameOfARecordIsNotTakenForOne(string text) => Assert.False(RecordId.TryParse(text, out _));

    [Fact]
    public void QuestionsNarrowByTaxonDatasetImportStatusDoubtDaySquareAndRecorder()
    {
        var first = _store.Import([Version(1), Version(2, "SU5678", "2005-05-06", taxon: 2), Version(3, "SU5612") with { Recorder = "B. Invented", Doubts = Doubts.AtSea }]);
        _store.Import([Version(4) with { Status = ReviewStatus.Confirmed }], dataset: "other");
        Assert.Equal(4, Count(new()));
        Assert.Equal(1, Count(new() { Taxa = [2] }));
        Assert.Equal(1, Count(new() { Dataset = "other" }));
        Assert.Equal(0, Count(new() { Dataset = "none of this name" }));
        Assert.Equal(3, Count(new() { Batch = first.Batch }));
        Assert.Equal(1, Count(new() { Status = ReviewStatus.Confirmed }));
        Assert.Equal(1, Count(new() { Doubts = Doubts.AtSea }));
        Assert.Equal(1, Count(new() { From = new(2005, 1, 1) }));
        Assert.Equal(3, Count(new() { To = new(2004, 1, 1) }));
        Assert.Equal(2, Count(new() { Within = GridReference.Parse("SU51") }) + Count(new() { Within = GridReference.Parse("SU5678") }));
        Assert.Equal(1, Count(new() { Recorder = "B. Invented" }));
        Assert.Equal(0, Count(new() { Recorder = "Nobody" }));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(10)]
    [InlineData(100)]
    public void PagesTogetherHoldEachRecordOnce(int limit)
    {
        _store.Import([.. Enumerable.Range(1, 10).Select(i => Version(i, day: $"2001-05-{i:00}") with { Doubts = (Doubts)(1 << (i % 3)) })]);
        Assert.Equal(10, Pages(after => Records.Find(new() { Limit = limit, After = after })).Distinct().Count());
        Assert.Equal(10, Pages(after => Records.Queue(new() { Limit = limit, After = after }, doubts => (double)doubts)).Distinct().Count());
    }

    [Fact]
    public void TheQueueHoldsUnreviewedRecordsWithDoubtsThatWeighTheHeaviestFirst()
    {
        _store.Import([
            Version(1),
            Version(2) with { Doubts = Doubts.UncertaintyAssumed },
            Version(3) with { Doubts = Doubts.AtSea },
            Version(4) with { Doubts = Doubts.AtSea, Status = ReviewStatus.Confirmed },
            Version(5) with { Doubts = Doubts.AtSea | Doubts.NameUncertain },
        ]);
        var queue = Records.Queue(new(), Weigh).Records;
        Assert.Equal([5L, 3L], queue.Select(record => record.Row));
        static double Weigh(Doubts doubts) => (doubts.HasFlag(Doubts.AtSea) ? 2 : 0) + (doubts.HasFlag(Doubts.NameUncertain) ? 3 : 0);
    }

    [Theory]
    [InlineData("x")]
    [InlineData("1")]
    [InlineData("1.2.3")]
    [InlineData("-1.2")]
    [InlineData("1.99999999999999999999")]
    public void APlaceThatNoPageEndedAtIsRefused(string after) =>
        Assert.Throws<StoreException>(() => Records.Find(new() { After = after }));

    private int Count(RecordQuery query) => Records.Find(query).Records.Count;

    private static List<RecordId> Pages(Func<string?, RecordPage> ask)
    {
        var all = new List<RecordId>();
        for (string? after = null; ;)
        {
            var page = ask(after);
            all.AddRange(page.Records.Select(record => record.Id));
            if ((after = page.Next) is null)
                return all;
        }
    }
}
