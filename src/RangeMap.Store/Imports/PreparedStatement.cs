using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace RangeMap.Store;

/// <summary>
/// One statement run millions of times. It binds through SQLite's own calls, because a parameter object a value costs
/// more than the insert itself (measured: 23 values a row, about three times the time).
/// </summary>
internal sealed class PreparedStatement : IDisposable
{
    private readonly sqlite3 _database;
    private readonly sqlite3_stmt _statement;
    private readonly IntPtr _native;
    private readonly (Kind Kind, long Bits)[] _bound;

    public PreparedStatement(SqliteConnection connection, string sql)
    {
        _database = connection.Handle!;
        Check(raw.sqlite3_prepare_v2(_database, sql, out _statement));
        _native = _statement.DangerousGetHandle();
        // Values stay bound from one run to the next, and many columns say the same row after row: a value that stands is not bound again.
        _bound = new (Kind, long)[raw.sqlite3_bind_parameter_count(_statement) + 1];
    }

    public PreparedStatement Bind(int index, long value)
    {
        if (Stands(index, Kind.Integer, value))
            return this;
        Check(NativeStatement.BindInteger(_native, index, value));
        return this;
    }

    public PreparedStatement Bind(int index, long? value) => value is { } number ? Bind(index, number) : BindNull(index);

    public PreparedStatement Bind(int index, double? value)
    {
        if (value is not { } number)
            return BindNull(index);
        if (Stands(index, Kind.Real, BitConverter.DoubleToInt64Bits(number)))
            return this;
        Check(NativeStatement.BindReal(_native, index, number));
        return this;
    }

    private PreparedStatement BindNull(int index)
    {
        if (Stands(index, Kind.Null, 0))
            return this;
        Check(NativeStatement.BindNull(_native, index));
        return this;
    }

    /// <summary>Binds each parameter to what one of another statement is bound to.</summary>
    /// <param name="other">The other statement.</param>
    /// <param name="skipped">How many of its parameters stand before the first of interest.</param>
    public void BindAs(PreparedStatement other, int skipped)
    {
        for (var index = 1; index < _bound.Length; index++)
        {
            var (kind, bits) = other._bound[index + skipped];
            _ = kind switch
            {
                Kind.Null => BindNull(index),
                Kind.Integer => Bind(index, bits),
                _ => Bind(index, BitConverter.Int64BitsToDouble(bits)),
            };
        }
    }

    /// <summary>True when the value is bound already; else it is noted, for the caller binds it.</summary>
    private bool Stands(int index, Kind kind, long bits)
    {
        if (_bound[index] == (kind, bits))
            return true;
        _bound[index] = (kind, bits);
        return false;
    }

    /// <summary>Runs a statement that gives no rows.</summary>
    public void Run()
    {
        var result = NativeStatement.Step(_native);
        _ = NativeStatement.Reset(_native);
        if (result != raw.SQLITE_DONE)
            Check(result);
    }

    /// <summary>Runs a query, and hands each row's integers to the reader until it says that it has what it wants.</summary>
    public void Query(Func<sqlite3_stmt, bool> found)
    {
        int result;
        while ((result = raw.sqlite3_step(_statement)) == raw.SQLITE_ROW && !found(_statement))
        {
        }

        raw.sqlite3_reset(_statement);
        if (result is not (raw.SQLITE_ROW or raw.SQLITE_DONE))
            Check(result);
    }

    public void Dispose() => _statement.Dispose();

    private void Check(int result)
    {
        if (result != raw.SQLITE_OK)
            throw new SqliteException(raw.sqlite3_errmsg(_database).utf8_to_string(), result);
    }

    /// <summary>What is bound; nothing at first, which the database takes for NULL.</summary>
    private enum Kind
    {
        Null,
        Integer,
        Real,
    }
}
