using CsCheck;
using RangeMap.Records;

namespace RangeMap.Store.Tests;

/// <summary>Chance histories of imports, undos, decisions and reversals, against the rule said without a database.</summary>
public class DecisionPropertyTests
{
    /// <summary>A decision on whatever record the store holds at a place in its list, or the reversal of an earlier one.</summary>
    private sealed record Verdict(int Pick, ReviewStatus? Status, int? Taxon, bool Reversal);

    private static readonly Gen<Verdict> SomeVerdict =
        from pick in Gen.Int[0, 30]
        from status in Gen.Int[-1, 3]
        from taxon in Gen.Int[-2, 3]
        from reversal in Gen.Int[0, 4]
        select new Verdict(pick, status < 0 ? null : (ReviewStatus)status, taxon < 1 ? null : taxon, reversal == 0);

    [Fact]
    public void WhateverIsImportedTakenBackAndDecidedTheCubeIsThatOfTheRecordsAndTheRecordsAreAsDecided() =>
        Gen.Select(SomeHistory.WithUndos, SomeVerdict.Array[6, 24]).Sample((history, verdicts) =>
        {
            using var store = new SomeStore();
            var log = new List<(long Set, RecordId Id, long Basis, ReviewStatus? Status, int? Taxon)>();
            var batches = new List<long>();
            for (var step = 0; step < Math.Max(history.Length, verdicts.Length); step++)
            {
                if (step < history.Length)
                    Do(store, history[step], batches);
                if (step < verdicts.Length)
                    Do(store, verdicts[step], log);
                AssertAsDecided(store, log);
            }

            FromRecords.AssertAgree(store.Database);
            Assert.Empty(new StoreVerification(store.Database).FindProblems());
        }, iter: 30);

    private static void Do(SomeStore store, Deed deed, List<long> batches)
    {
        if (deed.Kind != DeedKind.Undo)
        {
            if (SomeHistory.Do(store, deed) is { } figures)
                batches.Add(figures.Batch);
            return;
        }

        if (batches.Count == 0)
            return;
        try
        {
            new BatchUndo(store.Database, SomeStore.Clock).Run(batches[deed.Earlier % batches.Count]);
        }
        catch (StoreException before)
        {
            Assert.Contains("taken back already", before.Message, StringComparison.Ordinal);
        }
    }

    private static void Do(SomeStore store, Verdict verdict, List<(long Set, RecordId Id, long Basis, ReviewStatus? Status, int? Taxon)> log)
    {
        var decisions = new DecisionStore(store.Database, SomeStore.Clock);
        if (verdict.Reversal)
        {
            Reverse(decisions, verdict, log);
            return;
        }

        var records = new RecordStore(store.Database).Find(new()).Records;
        if (records.Count == 0)
            return;
        var record = records[verdict.Pick % records.Count];
        var answer = decisions.Decide(new([new(record.Id, record.Version)], "R. Invented", "") { Status = verdict.Status, TaxonId = verdict.Taxon is { } t ? $"t{t}" : null });
        var before = log.FindLast(d => d.Id == record.Id && d.Basis == record.Basis);
        log.Add((answer.Number!.Value, record.Id, record.Basis, verdict.Status ?? before.Status, verdict.Taxon ?? before.Taxon));
    }

    private static void Reverse(DecisionStore decisions, Verdict verdict, List<(long Set, RecordId Id, long Basis, ReviewStatus? Status, int? Taxon)> log)
    {
        if (log.Count == 0)
            return;
        var at = verdict.Pick % log.Count;
        var taken = log[at];
        DecisionAnswer answer;
        try
        {
            answer = decisions.Reverse(taken.Set, "R. Invented", "");
        }
        catch (StoreException before)
        {
            Assert.Contains("taken back already", before.Message, StringComparison.Ordinal);
            return;
        }

        var isLast = log.FindLastIndex(d => d.Id == taken.Id) == at;
        Assert.Equal(isLast ? 1 : 0, answer.Changed);
        if (!isLast)
            return;
        var earlier = log.Take(at).LastOrDefault(d => d.Id == taken.Id && d.Basis == taken.Basis);
        log.Add((answer.Number!.Value, taken.Id, taken.Basis, earlier.Status, earlier.Taxon));
    }

    private static void AssertAsDecided(SomeStore store, List<(long Set, RecordId Id, long Basis, ReviewStatus? Status, int? Taxon)> log)
    {
        foreach (var record in new RecordStore(store.Database).Find(new()).Records)
        {
            var any = log.Exists(d => d.Id == record.Id);
            var last = log.FindLast(d => d.Id == record.Id && d.Basis == record.Basis);
            var standing = any && last.Set != 0;
            if (standing && last.Status is { } status)
                Assert.Equal(status, record.ReviewStatus);
            else
                Assert.Null(record.SentStatus);
            if (standing && last.Taxon is { } taxon)
                Assert.Equal(taxon, record.Taxon);
            else
                Assert.Null(record.SentTaxon);
            Assert.Equal(any && !standing, record.Doubts.HasFlag(Doubts.ChangedSinceReview));
        }
    }
}
