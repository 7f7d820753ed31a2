using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace RangeMap.Store;

/// <summary>
/// Appends rows to the table of records, several with one statement: beginning and ending a statement costs SQLite about as much as a row itself. Rows that
/// wait stand in the statement's parameters.
/// </summary>
internal sealed class RecordAppender : IDisposable
{
#if DEBUG
    private const int RowsAtOnce = 3;
#else
    private const int RowsAtOnce = 16;
#endif

    private readonly SqliteConnection _connection;
    private readonly PreparedStatement _one;
    private long _next;
    private int _waiting;

    public RecordAppender(SqliteConnection connection, SqliteTransaction transaction)
    {
        _connection = connection;
        _next = connection.ExecuteScalar<long>(ImportSql.NextRecord, transaction: transaction);
        _one = new(connection, ImportSql.AddRecords(1));
        Statement = new(connection, ImportSql.AddRecords(RowsAtOnce));
    }

    /// <summary>What the next row's values are to be bound to.</summary>
    public PreparedStatement Statement { get; }

    /// <summary>The parameter of the next row's first value.</summary>
    public int FirstParameter => _waiting * ImportSql.ColumnCount + 1;

    /// <summary>Takes the row whose values were bound, and gives the number that it gets.</summary>
    public long Take()
    {
        var number = _next++;
        if (++_waiting == RowsAtOnce)
            Append(Statement, RowsAtOnce);
        return number;
    }

    /// <summary>Writes the rows that wait.</summary>
    public void Flush()
    {
        var waiting = _waiting;
        for (var row = 0; row < waiting; row++)
        {
            _one.BindAs(Statement, row * ImportSql.ColumnCount);
            Append(_one, 1);
        }
    }

    public void Dispose()
    {
        Statement.Dispose();
        _one.Dispose();
    }

    /// <summary>Numbers were given out before SQLite gave them; the table is this transaction's alone, and both count on from the greatest.</summary>
    private void Append(PreparedStatement statement, int rows)
    {
        statement.Run();
        _waiting -= rows;
        if (raw.sqlite3_last_insert_rowid(_connection.Handle) != _next - 1 - _waiting)
            throw new InvalidOperationException("A record was added under another number than it was given.");
    }
}
