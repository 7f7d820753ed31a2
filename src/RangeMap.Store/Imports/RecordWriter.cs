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
    private readonly PreparedStatement _add = new(connection, ImportSql.AddRecord);
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

    /// <summary>Adds a record and gives its row.</summary>
    public long Insert(Record record, in Standing standing)
    {
        Bind(_add, record, standing).Run();
        return raw.sqlite3_last_insert_rowid(connection.Handle);
    }

    /// <summary>Changes a record; what it said before is kept.</summary>
    public void Replace(Record record, in Standing standing, long id)
    {
        connection.Execute(ImportSql.KeepReplaced, new { Batch = batch, Id = id }, transaction);
        Bind(_replace, record, standing).Bind(30, id).Run();
    }

    /// <summary>Number of the recorder; 0 where none is named.</summary>
    public int RecorderOf(Record record) => (int)(_persons.Of(record.Recorder) ?? 0);

    public void Dispose()
    {
        _add.Dispose();
        _replace.Dispose();
        _find.Dispose();
    }

    private PreparedStatement Bind(PreparedStatement statement, Record record, in Standing standing) => statement
        .Bind(1, batch)
        .Bind(2, record.Row)
        .Bind(3, dataset)
        .Bind(4, (long)(ulong)(record.Key >> 64))
        .Bind(5, (long)(ulong)record.Key)
        .Bind(6, (long)(ulong)record.Content)
        .Bind(7, standing.Taxon)
        .Bind(8, record.Square.Code)
        .Bind(9, record.Dates.First.DayNumber)
        .Bind(10, record.Dates.Last.DayNumber)
        .Bind(11, record.Present ? 1L : 0L)
        .Bind(12, standing.Status)
        .Bind(13, standing.Doubts)
        .Bind(14, _persons.Of(record.Recorder))
        .Bind(15, _persons.Of(record.Determiner))
        .Bind(16, _words.Of(record.Stage))
        .Bind(17, _words.Of(record.Sex))
        .Bind(18, (long?)record.Count)
        .Bind(19, _words.Of(record.Site))
        .Bind(20, record.Point?.Latitude)
        .Bind(21, record.Point?.Longitude)
        .Bind(22, record.UncertaintyMetres)
        .Bind(23, standing.SentTaxon)
        .Bind(24, standing.SentStatus)
        .Bind(25, record.LengthMm)
        .Bind(26, _words.Of(record.Evidence))
        .Bind(27, _words.Of(record.Host))
        .Bind(28, _words.Of(record.Behaviour))
        .Bind(29, record.OnCompleteList ? 1L : 0L);
}
