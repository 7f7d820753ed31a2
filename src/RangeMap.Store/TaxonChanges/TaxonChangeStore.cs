using System.Globalization;
using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using RangeMap.Grids;

namespace RangeMap.Store;

/// <summary>
/// Renames, merges and splits taxa, and takes such changes back. The list, the records, the cube and the history change in
/// one transaction; records are identified afresh by decisions, so that each keeps the name that was sent.
/// </summary>
public sealed class TaxonChangeStore(Database database, TimeProvider clock)
{
    /// <summary>Every change, newest first.</summary>
    /// <exception cref="StoreException">The database cannot be read.</exception>
    public IReadOnlyList<TaxonChange> ReadAll() => database.Use<IReadOnlyList<TaxonChange>>(connection => connection.Query<TaxonChange>(TaxonChangeSql.ReadAll).AsList());

    /// <summary>Gives a taxon another name; the old one becomes a synonym.</summary>
    /// <exception cref="StoreException">There is no such taxon, or it bears the name already.</exception>
    public TaxonChangeAnswer Rename(string taxonId, string name, string? authorship, string by, string reason) => Change((connection, transaction) =>
    {
        var taxon = Find(connection, transaction, taxonId);
        if (taxon.ScientificName == name && taxon.Authorship == authorship)
            throw new StoreException($"The taxon is called {name} already.", "Give another name.");
        connection.Execute(TaxonChangeSql.Restore, taxon with { ScientificName = name, Authorship = authorship }, transaction);
        var words = $"{taxon.ScientificName} is called {name} from now on.";
        var number = Add(connection, transaction, "rename", taxon, by, reason, words, [taxon], null);
        connection.Execute(
            TaxonChangeSql.AddSynonym, new { Id = SynonymOf(taxon, number), Name = taxon.ScientificName, taxon.Authorship, Taxon = taxon.Number }, transaction);
        return new(number, words, 0);
    });

    /// <summary>Merges a taxon into another: its records count for the other, and its names are names of the other.</summary>
    /// <exception cref="StoreException">There is no such taxon, or it would be merged into itself or into one that was itself merged.</exception>
    public TaxonChangeAnswer Merge(string taxonId, string intoId, string by, string reason) => Change((connection, transaction) =>
    {
        TaxonState taxon = Find(connection, transaction, taxonId), into = Find(connection, transaction, intoId);
        if (taxon.Number == into.Number)
            throw new StoreException("A taxon cannot be merged into itself.", "Name two taxa.");
        var words = $"{taxon.ScientificName} is part of {into.ScientificName} from now on.";
        var writer = DecisionWriter.Begin(connection, transaction, Now(), by, $"{words} {reason}".Trim(), reverses: null);
        Identify(connection, transaction, writer, taxon, new(into.Id), into.Number);
        var decided = writer.Finish();
        connection.Execute(TaxonChangeSql.Restore, taxon with { ReplacedBy = into.Number }, transaction);
        return new(Add(connection, transaction, "merge", taxon, by, reason, words, [taxon, into], decided.Number), words, decided.Changed);
    });

    /// <summary>
    /// Splits a taxon: it becomes the aggregate of its parts, and each record goes to the part of the first rule that it
    /// fits. Records that fit none stay with the aggregate, for they cannot be told.
    /// </summary>
    /// <exception cref="StoreException">There is no such taxon, no rule, or a part is the taxon itself.</exception>
    public TaxonChangeAnswer Split(string taxonId, IReadOnlyList<SplitRule> rules, string by, string reason) => Change((connection, transaction) =>
    {
        var taxon = Find(connection, transaction, taxonId);
        var parts = rules.Select(rule => rule.ToTaxonId).Distinct().Select(id => Find(connection, transaction, id)).ToList();
        if (parts.Count == 0)
            throw new StoreException("No rule says what the parts are.", "Give a rule for each part; rules without conditions are allowed.");
        if (parts.Exists(part => part.Number == taxon.Number))
            throw new StoreException("A taxon cannot be a part of itself.", "Add the parts to the taxon list under identifiers of their own first.");
        var words = $"{taxon.ScientificName} is the aggregate of {string.Join(" and ", parts.Select(part => part.ScientificName))} from now on.";
        var writer = DecisionWriter.Begin(connection, transaction, Now(), by, $"{words} {reason}".Trim(), reverses: null);
        foreach (var rule in rules)
            Identify(connection, transaction, writer, taxon, rule, parts.Find(part => part.Id == rule.ToTaxonId)!.Number);
        var decided = writer.Finish();
        connection.Execute(TaxonChangeSql.Restore, taxon with { Rank = "aggregate" }, transaction);
        foreach (var part in parts)
            connection.Execute(TaxonChangeSql.Restore, part with { AggregateId = taxon.Id }, transaction);
        return new(Add(connection, transaction, "split", taxon, by, reason, words, [taxon, .. parts], decided.Number), words, decided.Changed);
    });

    /// <summary>Takes a change back: the list and the records stand as before; later decisions of people stay.</summary>
    /// <exception cref="StoreException">There is no such change, it was taken back already, or a later one builds on it.</exception>
    public TaxonChangeAnswer Undo(long number, string by) => Change((connection, transaction) =>
    {
        var change = Undoable(connection, transaction, number, out var before);
        foreach (var state in before)
            connection.Execute(TaxonChangeSql.Restore, state, transaction);
        if (change.Kind == "rename")
            connection.Execute(TaxonChangeSql.RemoveSynonym, new { id = SynonymOf(before[0], number) }, transaction);
        var words = $"Taken back: {change.Words}";
        DecisionAnswer? reversed = null;
        if (change.DecisionSet is { } set)
        {
            var writer = DecisionWriter.Begin(connection, transaction, Now(), by, words, reverses: set);
            writer.Reverse(set);
            reversed = writer.Finish();
        }

        connection.Execute(TaxonChangeSql.Mark, new { Number = number, At = Now() }, transaction);
        return new(number, words, reversed?.Changed ?? 0, reversed?.DecidedLater.Count ?? 0);
    });

    private static TaxonChange Undoable(SqliteConnection connection, SqliteTransaction transaction, long number, out List<TaxonState> before)
    {
        var change = connection.QuerySingleOrDefault<TaxonChange>(TaxonChangeSql.ReadOne, new { number }, transaction)
            ?? throw new StoreException(FormattableString.Invariant($"There is no change of a taxon number {number}."), "rangemap taxon changes lists them.");
        if (change.UndoneAt is { } at)
            throw new StoreException(FormattableString.Invariant($"Change {number} was taken back already, at {at}."), "Make the change anew if it shall count again.");
        before = JsonSerializer.Deserialize<List<TaxonState>>(change.Before)!;
        if (connection.ExecuteScalar<long?>(TaxonChangeSql.LaterOnTaxon, new { number, numbers = before.Select(state => state.Number) }, transaction) is { } later)
            throw new StoreException(FormattableString.Invariant($"Change {later} was made on the same taxa later."), FormattableString.Invariant($"Take change {later} back first."));
        return change;
    }

    /// <summary>Identifies the records of a taxon that a rule names as another taxon.</summary>
    private static void Identify(SqliteConnection connection, SqliteTransaction transaction, DecisionWriter writer, TaxonState taxon, SplitRule rule, long to)
    {
        foreach (var within in rule.Within ?? [default(Square)])
        {
            var (conditions, values) = Conditions(connection, taxon, rule, within);
            foreach (var row in connection.Query<RecordRow>(TaxonChangeSql.RecordsOf(conditions), values, transaction).AsList())
                writer.Decide(new(row.Identity, null), status: null, to);
        }
    }

    private static (List<string> Conditions, DynamicParameters Values) Conditions(SqliteConnection connection, TaxonState taxon, SplitRule rule, Square within)
    {
        var (conditions, values) = (new List<string> { TaxonChangeSql.OfTaxon }, new DynamicParameters(new { Taxon = taxon.Number }));
        void Where(string condition, string name, object? value)
        {
            if (value is null)
                return;
            conditions.Add(condition);
            values.Add(name, value);
        }

        Where(RecordSql.Condition.WhollyFrom, "FromDay", rule.From?.DayNumber);
        Where(RecordSql.Condition.WhollyTo, "ToDay", rule.To?.DayNumber);
        Where(TaxonChangeSql.Stage, "Stage", rule.Stage);
        Where(TaxonChangeSql.Sex, "Sex", rule.Sex);
        if (within.Code == 0)
            return (conditions, values);
        RecordStore.DefineWithin(connection);
        Where(RecordSql.Condition.Within, "WithinCode", within.Code);
        return (conditions, values);
    }

    private long Add(
        SqliteConnection connection, SqliteTransaction transaction, string kind, TaxonState taxon, string by, string reason, string words, List<TaxonState> before, long? decisionSet) =>
        connection.ExecuteScalar<long>(
            TaxonChangeSql.Add,
            new { Kind = kind, Taxon = taxon.Number, MadeAt = Now(), By = by, Reason = reason, Words = words, Before = JsonSerializer.Serialize(before), DecisionSet = decisionSet },
            transaction);

    private static TaxonState Find(SqliteConnection connection, SqliteTransaction transaction, string id)
    {
        var found = connection.QuerySingleOrDefault<TaxonState>(TaxonChangeSql.FindTaxon, new { id }, transaction)
            ?? throw new StoreException($"The taxon list has no taxon \"{id}\".", "Use a taxonID of the list; add new taxa to the list first.");
        return found.ReplacedBy is null ? found : throw new StoreException($"{found.ScientificName} was merged into another taxon.", "Use that one, or take the merge back.");
    }

    private static string SynonymOf(TaxonState taxon, long change) => FormattableString.Invariant($"{taxon.Id}#before-change-{change}");

    private TaxonChangeAnswer Change(Func<SqliteConnection, SqliteTransaction, TaxonChangeAnswer> work) => database.Use(connection =>
    {
        LookupIndexes.Make(connection);
        connection.DefaultTimeout = ImportSession.LongestWaitSeconds;
        using var transaction = connection.BeginTransaction(deferred: false);
        var answer = work(connection, transaction);
        Editions.Advance(connection, transaction, string.Create(CultureInfo.InvariantCulture, $"change {answer.Number} of a taxon"), clock.GetUtcNow());
        transaction.Commit();
        return answer;
    });

    private string Now() => UtcText.Of(clock.GetUtcNow());
}
