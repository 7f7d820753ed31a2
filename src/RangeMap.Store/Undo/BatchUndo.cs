using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;

namespace RangeMap.Store;

/// <summary>
/// Takes whole imports back. Records that an import added go, records that it changed say again what they said before,
/// and cube and visits follow, all in one transaction. The batch stays, marked as undone, with its rows as they were sent.
/// </summary>
/// <remarks>
/// A record always says what the newest import that was not taken back said of it. So a record that a later import
/// changed keeps what that one said; should the later one be taken back too, the version of an undone import is passed over.
/// </remarks>
public sealed class BatchUndo(Database database, TimeProvider clock)
{
    /// <summary>Takes an import back; waits while another program writes.</summary>
    /// <param name="batch">Its number.</param>
    /// <exception cref="StoreException">There is no such import, it was taken back already, or the database cannot be written to.</exception>
    public UndoneBatch Run(long batch) => database.Use(connection =>
    {
        connection.DefaultTimeout = ImportSession.LongestWaitSeconds;
        using var transaction = connection.BeginTransaction(deferred: false);
        CheckThatItCounts(connection, transaction, batch);
        var undone = TakeBack(connection, transaction, batch);
        var now = clock.GetUtcNow();
        connection.Execute(UndoSql.Mark, new { batch, at = UtcText.Of(now) }, transaction);
        if (undone.Removed + undone.Restored > 0)
            Editions.Advance(connection, transaction, string.Create(CultureInfo.InvariantCulture, $"undo of import {batch}"), now);
        transaction.Commit();
        return undone;
    });

    private static void CheckThatItCounts(SqliteConnection connection, SqliteTransaction transaction, long batch)
    {
        var state = connection.QuerySingleOrDefault<BatchState>(UndoSql.ReadState, new { batch }, transaction)
            ?? throw new StoreException(string.Create(CultureInfo.InvariantCulture, $"There is no import number {batch}."), "rangemap import tells each import's number.");
        if (state.UndoneAt is { } before)
            throw new StoreException(string.Create(CultureInfo.InvariantCulture, $"Import {batch} was taken back already, at {before}."), "Import its file again if its records shall count again.");
    }

    private static UndoneBatch TakeBack(SqliteConnection connection, SqliteTransaction transaction, long batch)
    {
        var change = new CubeChange(connection, transaction);
        foreach (var row in connection.Query<RecordRow>(UndoSql.StatedBy, new { batch }, transaction, buffered: false))
            change.Remove(row);

        var decisions = new DecisionLookup(connection, transaction);
        var restored = 0;
        foreach (var id in connection.Query<long>(UndoSql.ReplacedBy, new { batch }, transaction).AsList())
        {
            if (!TryRestore(connection, transaction, batch, id))
                continue;
            change.Add(StandAsDecided(connection, transaction, decisions, id));
            restored++;
        }

        var removed = connection.Execute(UndoSql.RemoveStatedBy, new { batch }, transaction);
        change.Write();
        CubeStore.Compact(connection, transaction);
        var changedLater = connection.ExecuteScalar<int>(UndoSql.CountChangedLater, new { batch }, transaction);
        var repeatedBy = removed == 0 ? [] : connection.Query<long>(UndoSql.RepeatedBy, new { batch }, transaction).AsList();
        return new(batch, removed, restored, changedLater, repeatedBy);
    }

    /// <summary>Gives a record back its newest earlier version of an import that counts; false when it has none.</summary>
    private static bool TryRestore(SqliteConnection connection, SqliteTransaction transaction, long batch, long id)
    {
        var by = batch;
        while (connection.QuerySingleOrDefault<Version>(UndoSql.VersionBefore, new { by, id }, transaction) is { } before)
        {
            if (!before.Undone)
                connection.Execute(UndoSql.Restore, new { by, id }, transaction);
            connection.Execute(UndoSql.RemoveVersion, new { by, id }, transaction);
            if (!before.Undone)
                return true;
            by = before.Batch;
        }

        return false;
    }

    /// <summary>Decisions that were made since the restored version was replaced count for it too.</summary>
    private static RecordRow StandAsDecided(SqliteConnection connection, SqliteTransaction transaction, DecisionLookup decisions, long id)
    {
        var row = connection.QuerySingle<RecordRow>(ImportSql.ReadForCube, new { Id = id }, transaction);
        var now = row.With(decisions.StandingOf(row.Identity, Standing.AsSent(row), DecisionBasis.Of(row)));
        if (now != row)
            connection.Execute(DecisionSql.Stand, now, transaction);
        return now;
    }

    private sealed record BatchState
    {
        public long Number { get; init; }

        public string? UndoneAt { get; init; }
    }

    private sealed record Version
    {
        public long Batch { get; init; }

        public bool Undone { get; init; }
    }
}

/// <summary>What taking an import back did.</summary>
/// <param name="Batch">The import.</param>
/// <param name="Removed">Records that are gone.</param>
/// <param name="Restored">Records that say again what an earlier import said.</param>
/// <param name="ChangedLater">Records that stay because a later import had changed them.</param>
/// <param name="RepeatedBy">Later imports of the data set with rows that were known already; if this one's records were among them, they come back by importing those files again.</param>
public sealed record UndoneBatch(long Batch, int Removed, int Restored, int ChangedLater, IReadOnlyList<long> RepeatedBy);
