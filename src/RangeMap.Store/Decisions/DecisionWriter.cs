using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>Writes one set of decisions, and what follows from it for records, cube and visits, within a transaction.</summary>
internal sealed class DecisionWriter
{
    private readonly SqliteConnection _connection;
    private readonly SqliteTransaction _transaction;
    private readonly long _set;
    private readonly CubeChange _change;
    private readonly List<RecordId> _missing = [], _changedMeanwhile = [], _decidedLater = [];
    private int _changed;

    private DecisionWriter(SqliteConnection connection, SqliteTransaction transaction, long set)
    {
        _connection = connection;
        _transaction = transaction;
        _set = set;
        _change = new(connection, transaction);
    }

    public static DecisionWriter Begin(SqliteConnection connection, SqliteTransaction transaction, string now, string by, string reason, long? reverses) =>
        new(connection, transaction, connection.ExecuteScalar<long>(DecisionSql.AddSet, new { MadeAt = now, By = by, Reason = reason, Reverses = reverses }, transaction));

    /// <summary>Decides on a record if it still says what the person saw.</summary>
    /// <param name="mark">The record, as it was seen.</param>
    /// <param name="status">The new status; null keeps the one that stands.</param>
    /// <param name="taxon">The taxon that it is identified as afresh; null keeps the one that stands.</param>
    public void Decide(RecordMark mark, long? status, long? taxon)
    {
        if (Find(mark.Id) is not { } row)
        {
            _missing.Add(mark.Id);
            return;
        }

        if (mark.Version is { } seen && seen != row.Version)
        {
            _changedMeanwhile.Add(mark.Id);
            return;
        }

        var basis = DecisionBasis.Of(row);
        var before = RulingOn(mark.Id, basis, beforeDecision: long.MaxValue);
        Write(mark.Id, row, basis, new(status ?? before.Status, taxon ?? before.Taxon));
    }

    /// <summary>Lets the records of a set stand as they did before it.</summary>
    public void Reverse(long set)
    {
        foreach (var decision in _connection.Query<DecisionRow>(DecisionSql.OfSet, new { set }, _transaction).AsList())
            Reverse(decision);
    }

    /// <summary>Lets a record stand as it did before a decision, unless somebody decided on it later.</summary>
    private void Reverse(DecisionRow decision)
    {
        var id = RecordId.Of(decision.Dataset, decision.KeyHigh, decision.KeyLow);
        if (DecisionLookup.Read(_connection, _transaction, id)[^1].Number != decision.Number)
            _decidedLater.Add(id);
        else
            Write(id, Find(id), decision.Basis, RulingOn(id, decision.Basis, decision.Number));
    }

    public DecisionAnswer Finish()
    {
        _change.Write();
        CubeStore.Compact(_connection, _transaction);
        return new(_set, _changed, _missing, _changedMeanwhile, _decidedLater);
    }

    private RecordRow? Find(RecordId id) =>
        _connection.QuerySingleOrDefault<RecordRow>(DecisionSql.FindRecord, new { id.Dataset, id.KeyHigh, id.KeyLow }, _transaction);

    private Ruling RulingOn(RecordId id, long basis, long beforeDecision) =>
        DecisionLookup.Read(_connection, _transaction, id).FindLast(d => d.Basis == basis && d.Number < beforeDecision)?.Ruling ?? Ruling.AsSent;

    /// <summary>Keeps the decision; a record that is not there at present will stand under it when it comes back.</summary>
    private void Write(RecordId id, RecordRow? row, long basis, Ruling ruling)
    {
        _changed++;
        _connection.Execute(
            DecisionSql.Add, new { DecisionSet = _set, id.Dataset, id.KeyHigh, id.KeyLow, Basis = basis, ruling.Status, ruling.Taxon }, _transaction);
        if (row is null || DecisionBasis.Of(row) != basis)
            return;
        _change.Remove(row);
        var now = row.With(Standing.AsSent(row).Under(ruling));
        _change.Add(now);
        _connection.Execute(DecisionSql.Stand, now, _transaction);
    }
}
