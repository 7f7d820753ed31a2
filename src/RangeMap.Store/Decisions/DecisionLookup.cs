using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>
/// Tells how records stand under the decisions on them, within one transaction. Most records have none, which costs a
/// look into a set and no question to the database.
/// </summary>
internal sealed class DecisionLookup
{
    private readonly SqliteConnection _connection;
    private readonly SqliteTransaction _transaction;
    private readonly HashSet<long> _decided;

    public DecisionLookup(SqliteConnection connection, SqliteTransaction transaction)
    {
        _connection = connection;
        _transaction = transaction;
        _decided = connection.Query<long>(DecisionSql.DecidedKeys, transaction: transaction, buffered: false).ToHashSet();
    }

    /// <summary>The record as it counts.</summary>
    /// <param name="id">The record.</param>
    /// <param name="sent">The record as it was sent.</param>
    /// <param name="basis">What it says; see <see cref="DecisionBasis"/>.</param>
    public Standing StandingOf(RecordId id, Standing sent, long basis)
    {
        if (_decided.Count == 0 || !_decided.Contains(id.KeyLow))
            return sent;
        var decisions = Read(_connection, _transaction, id);
        if (decisions.Count == 0)
            return sent;
        return decisions.FindLast(decision => decision.Basis == basis) is { } last ? sent.Under(last.Ruling) : sent.ChangedSinceReview();
    }

    /// <summary>The decisions on a record, oldest first.</summary>
    public static List<DecisionRow> Read(SqliteConnection connection, SqliteTransaction? transaction, RecordId id) =>
        connection.Query<DecisionRow>(DecisionSql.OfRecord, new { id.Dataset, id.KeyHigh, id.KeyLow }, transaction).AsList();
}

/// <summary>A row of the table of decisions.</summary>
internal sealed record DecisionRow
{
    public long Number { get; init; }

    public long DecisionSet { get; init; }

    public long Dataset { get; init; }

    public long KeyHigh { get; init; }

    public long KeyLow { get; init; }

    public long Basis { get; init; }

    public long? Status { get; init; }

    public long? Taxon { get; init; }

    public Ruling Ruling => new(Status, Taxon);
}
