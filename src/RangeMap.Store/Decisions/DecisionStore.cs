using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>
/// Keeps people's decisions on records and lets maps follow at once: decision, record, cube and visits change in one
/// transaction. The history only grows; a reversal is a decision that says what stood before.
/// </summary>
public sealed class DecisionStore(Database database, TimeProvider clock)
{
    /// <summary>Decides on records.</summary>
    /// <exception cref="StoreException">The taxon is not in the list, or the database cannot be written to; nothing is then decided.</exception>
    public DecisionAnswer Decide(Decision decision) => Change((connection, transaction) =>
    {
        var taxon = decision.TaxonId is { } id ? NumberOf(connection, transaction, id) : null;
        var writer = DecisionWriter.Begin(connection, transaction, Now(), decision.By, decision.Reason, reverses: null);
        foreach (var mark in decision.Records)
            writer.Decide(mark, (long?)decision.Status, taxon);
        return writer.Finish();
    });

    /// <summary>
    /// Takes a set of decisions back: each record stands as it did before. A record on which somebody decided later keeps
    /// the later decision and is counted.
    /// </summary>
    /// <exception cref="StoreException">There is no such set, or it was taken back already, or the database cannot be written to.</exception>
    public DecisionAnswer Reverse(long set, string by, string reason) => Change((connection, transaction) =>
    {
        if (connection.QuerySingleOrDefault<long?>(DecisionSql.FindSet, new { set }, transaction) is null)
            throw new StoreException(FormattableString.Invariant($"There is no decision number {set}."), "The history of a record tells the numbers of its decisions.");
        if (connection.QuerySingleOrDefault<long?>(DecisionSql.FindReversal, new { set }, transaction) is { } reversal)
            throw new StoreException(FormattableString.Invariant($"Decision {set} was taken back already, by decision {reversal}."), "Decide afresh, or take the reversal back.");
        var writer = DecisionWriter.Begin(connection, transaction, Now(), by, reason, reverses: set);
        writer.Reverse(set);
        return writer.Finish();
    });

    private DecisionAnswer Change(Func<SqliteConnection, SqliteTransaction, DecisionAnswer> work) => database.Use(connection =>
    {
        LookupIndexes.Make(connection);
        connection.DefaultTimeout = ImportSession.LongestWaitSeconds;
        using var transaction = connection.BeginTransaction(deferred: false);
        var answer = work(connection, transaction);
        if (answer.Changed == 0)
            return answer with { Number = null };
        Editions.Advance(connection, transaction, string.Create(CultureInfo.InvariantCulture, $"decision {answer.Number}"), clock.GetUtcNow());
        transaction.Commit();
        return answer;
    });

    private string Now() => UtcText.Of(clock.GetUtcNow());

    private static long? NumberOf(SqliteConnection connection, SqliteTransaction transaction, string id) =>
        connection.QuerySingleOrDefault<long?>(DecisionSql.FindTaxon, new { id }, transaction)
        ?? throw new StoreException($"The taxon list has no taxon \"{id}\".", "Use a taxonID of the list.");
}
