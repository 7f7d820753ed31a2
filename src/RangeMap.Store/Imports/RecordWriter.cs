using Dapper;
using Microsoft.Data.Sqlite;
using RangeMap.Records;
using SQLitePCL;

namespace RangeMap.Store;

/// <summary>Finds, adds and changes rows of the table of records, millions of them, within one import.</summary>
internal sealed class RecordWriter(SqliteConnection connection, SqliteTransaction transaction, long dataset, long batch) : IDisposable
{
    private readonly Numbering _persons = Numbering.OfPersons(connection, transaction);
    private readonly Numbering _words = Numbering.OfWords(connection, transaction);
    private readonly RecordAppender _add = new(connection, transaction);
    private readonly PreparedStatement _replace = new(connection, ImportSql.ChangeRecord);
    private readonly PreparedStatement _find = new(connection, ImportSql.FindByKey);

    /// <summary>The record of the data set with a key; null where there is none.</summary>
    public (long Id, long Content)? Find(UInt128 key)
    {
        (long, long)? found = null;
        _find.Bind(1, (long)(ulong)(key >> 64)).Query(row =>
        {
            if (raw.sqlite3_column_int64(row, 1) != (long)(ulong)key || raw.sqlite3_column_int64(row, 3) != dataset)
                return false;
            found = (raw.sqlite3_column_int64(row, 0), raw.sqlite3_column_int64(row, 2));
            return true;
        });
        return found;
    }

    /// <summary>Adds a record and gives its number; it reaches the table with <see cref="Flush"/> at the latest.</summary>
    public long Insert(Record record, in Standing standing)
    {
        Bind(_add.Statement, _add.FirstParameter, record, standing);
        return _add.Take();
    }

    /// <summary>Writes the records that were added and wait.</summary>
    public void Flush() => _add.Flush();

    /// <summary>Changes a record; what it said before is kept.</summary>
    public void Replace(Record record, in Standing standing, long id)
    {
        connection.Execute(ImportSql.KeepReplaced, new { Batch = batch, Id = id }, transaction);
        Bind(_replace, 1, record, standing).Bind(ImportSql.ColumnCount + 1, id).Run();
    }

    /// <summary>Number of the recorder; 0 where none is named.</summary>
    public int RecorderOf(Record record) => (int)(_persons.Of(record.Recorder) ?? 0);

    public void Dispose()
    {
        _add.Dispose();
        _replace.Dispose();
        _find.Dispose();
    }

    private PreparedStatement Bind(PreparedStatement statement, int first, Record record, in Standing standing) => statement
        .Bind(first, batch)
        .Bind(first + 1, record.Row)
        .Bind(first + 2, dataset)
        .Bind(first + 3, (long)(ulong)(record.Key >> 64))
        .Bind(first + 4, (long)(ulong)record.Key)
        .Bind(first + 5, (long)(ulong)record.Content)
        .Bind(first + 6, standing.Taxon)
        .Bind(first + 7, record.Square.Code)
        .Bind(first + 8, record.Dates.First.DayNumber)
        .Bind(first + 9, record.Dates.Last.DayNumber)
        .Bind(first + 10, record.Present ? 1L : 0L)
        .Bind(first + 11, standing.Status)
        .Bind(first + 12, standing.Doubts)
        .Bind(first + 13, _persons.Of(record.Recorder))
        .Bind(first + 14, _persons.Of(record.Determiner))
        .Bind(first + 15, _words.Of(record.Stage))
        .Bind(first + 16, _words.Of(record.Sex))
        .Bind(first + 17, (long?)record.Count)
        .Bind(first + 18, _words.Of(record.Site))
        .Bind(first + 19, record.Point?.Latitude)
        .Bind(first + 20, record.Point?.Longitude)
        .Bind(first + 21, record.UncertaintyMetres)
        .Bind(first + 22, standing.SentTaxon)
        .Bind(first + 23, standing.SentStatus)
        .Bind(first + 24, record.LengthMm)
        .Bind(first + 25, _words.Of(record.Evidence))
        .Bind(first + 26, _words.Of(record.Host))
        .Bind(first + 27, _words.Of(record.Behaviour))
        .Bind(first + 28, record.OnCompleteList ? 1L : 0L);
}
