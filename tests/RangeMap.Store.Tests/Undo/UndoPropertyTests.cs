using CsCheck;
using Dapper;

namespace RangeMap.Store.Tests;

public class UndoPropertyTests
{
    /// <summary>The rule, said without a database: a record says what the newest import that counts said of it.</summary>
    private sealed class Rule
    {
        private readonly List<(long Batch, string Dataset, Record Record)> _said = [];
        private readonly HashSet<long> _undone = [];

        public void Import(long batch, Deed deed)
        {
            var now = Now();
            foreach (var record in deed.Records.Where(record => !now.TryGetValue((deed.Dataset, record.Key), out var known) || known.Content != record.Content))
                _said.Add((batch, deed.Dataset, record));
        }

        public bool Undo(long batch) => _undone.Add(batch);

        public Dictionary<(string Dataset, UInt128 Key), Record> Now()
        {
            var now = new Dictionary<(string, UInt128), Record>();
            foreach (var (_, dataset, record) in _said.Where(said => !_undone.Contains(said.Batch)))
                now[(dataset, record.Key)] = record;
            return now;
        }
    }

    [Fact]
    public void WhateverIsImportedAndTakenBackEachRecordSaysWhatTheNewestImportThatCountsSaid() =>
        SomeHistory.WithUndos.Sample(history =>
        {
            using var store = new SomeStore();
            var (rule, batches) = (new Rule(), new List<long>());
            foreach (var deed in history)
            {
                if (deed.Kind == DeedKind.Undo)
                    Undo(store, rule, batches, deed.Earlier);
                else if (SomeHistory.Do(store, deed) is { } figures)
                {
                    rule.Import(figures.Batch, deed);
                    batches.Add(figures.Batch);
                }

                Assert.Equal(Expected(rule), Kept(store.Database));
            }

            FromRecords.AssertAgree(store.Database);
            Assert.Empty(new StoreVerification(store.Database).FindProblems());
        }, iter: 50);

    [Fact]
    public void AnImportAndItsUndoAreAsIfNothingHadBeen() =>
        Gen.Select(SomeHistory.OfImports, SomeHistory.OfImports).Sample((history, more) =>
        {
            using var store = new SomeStore();
            foreach (var deed in history)
                SomeHistory.Do(store, deed);
            var before = Dump(store);
            var figures = SomeHistory.Do(store, more[0] with { Kind = DeedKind.Import })!;
            new BatchUndo(store.Database, SomeStore.Clock).Run(figures.Batch);
            Assert.Equal(before, Dump(store));
            FromRecords.AssertAgree(store.Database);
        }, iter: 30);

    private static string Dump(SomeStore store) =>
        LogicalDump.Of(store.Database, "batch", "source_block", "edition", "person", "word", "dataset", "cube_segment", "visit_segment");

    private static void Undo(SomeStore store, Rule rule, List<long> batches, int earlier)
    {
        if (batches.Count == 0)
            return;
        var batch = batches[earlier % batches.Count];
        if (rule.Undo(batch))
            new BatchUndo(store.Database, SomeStore.Clock).Run(batch);
        else
            Assert.Throws<StoreException>(() => new BatchUndo(store.Database, SomeStore.Clock).Run(batch));
    }

    private static IEnumerable<(string, long, long)> Expected(Rule rule) =>
        rule.Now().Select(pair => (pair.Key.Dataset, (long)(ulong)pair.Key.Key, (long)(ulong)pair.Value.Content)).Order();

    private static IEnumerable<(string, long, long)> Kept(Database database)
    {
        using var connection = database.Connect();
        return [.. connection.Query<(string, long, long)>("SELECT d.id, r.key_low, r.content FROM record AS r JOIN dataset AS d ON d.number = r.dataset").Order()];
    }
}
