using Microsoft.Data.Sqlite;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>Adds refused rows: one command for all, for a bad file has as many as rows.</summary>
internal sealed class RefusalRows : IDisposable
{
    private readonly SqliteCommand _add;

    public RefusalRows(SqliteConnection connection, SqliteTransaction transaction, long batch)
    {
        _add = connection.CreateCommand();
        (_add.CommandText, _add.Transaction) = (ImportSql.AddRefusal, transaction);
        _add.Parameters.AddWithValue("@Batch", batch);
        foreach (var name in (string[])["@Row", "@Line", "@Field", "@Value", "@Reason", "@Raw"])
            _add.Parameters.Add(new SqliteParameter { ParameterName = name });
    }

    public void Add(Refusal refusal)
    {
        (_add.Parameters[1].Value, _add.Parameters[2].Value, _add.Parameters[3].Value) = (refusal.Row, refusal.Line, refusal.Field);
        (_add.Parameters[4].Value, _add.Parameters[5].Value, _add.Parameters[6].Value) = (refusal.Value, refusal.Reason, refusal.RawText);
        _add.ExecuteNonQuery();
    }

    public void Dispose() => _add.Dispose();
}
