using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace RangeMap.Store;

/// <summary>
/// Reads rows of records column by column, with the names that they point to from <see cref="RecordTexts"/>. An export reads millions of rows; a
/// general mapper of thirty columns and nine joins a row took the larger part of its time.
/// </summary>
internal static class StoredRecordReader
{
    /// <summary>The records of a statement that gives <see cref="RecordSql.Columns"/>, in its order.</summary>
    public static List<StoredRecord> Read(SqliteConnection connection, string sql, object values, RecordTexts texts)
    {
        var records = new List<StoredRecord>();
        using var rows = connection.ExecuteReader(sql, values);
        var own = (SqliteDataReader)((IWrappedDataReader)rows).Reader;
        var handle = own.Handle!;
        while (own.Read())
            records.Add(RecordOf(new(handle.DangerousGetHandle()), connection, texts));
        return records;
    }

    /// <summary>A record of the row on which a statement stands; the numbers are the places in <see cref="RecordSql.Columns"/>.</summary>
    private static StoredRecord RecordOf(NativeRow row, SqliteConnection connection, RecordTexts texts) => new()
    {
        RowId = row.Whole(0),
        DatasetNumber = row.Whole(1),
        Dataset = texts.Dataset(connection, row.Whole(1)),
        Batch = row.Whole(2),
        Row = row.Whole(3),
        KeyHigh = row.Whole(4),
        KeyLow = row.Whole(5),
        Content = row.Whole(6),
        Taxon = row.Whole(7),
        SentTaxon = row.WholeOrNone(8),
        SentStatus = row.WholeOrNone(9),
        SquareCode = row.Whole(10),
        FirstDay = row.Whole(11),
        LastDay = row.Whole(12),
        PresentBit = row.Whole(13),
        CompleteBit = row.Whole(14),
        Status = row.Whole(15),
        DoubtBits = row.Whole(16),
        Recorder = texts.Person(connection, row.WholeOrNone(17)),
        Determiner = texts.Person(connection, row.WholeOrNone(18)),
        Stage = texts.Word(connection, row.WholeOrNone(19)),
        Sex = texts.Word(connection, row.WholeOrNone(20)),
        Individuals = row.WholeOrNone(21),
        Site = texts.Word(connection, row.WholeOrNone(22)),
        Latitude = row.NumberOrNone(23),
        Longitude = row.NumberOrNone(24),
        Uncertainty = row.NumberOrNone(25),
        LengthMm = row.NumberOrNone(26),
        Evidence = texts.Word(connection, row.WholeOrNone(27)),
        Host = texts.Word(connection, row.WholeOrNone(28)),
        Behaviour = texts.Word(connection, row.WholeOrNone(29)),
    };

    /// <summary>The row on which a statement stands.</summary>
    private readonly struct NativeRow(IntPtr statement)
    {
        public long Whole(int column) => NativeStatement.ColumnInteger(statement, column);

        public long? WholeOrNone(int column) => IsNull(column) ? null : Whole(column);

        public double? NumberOrNone(int column) => IsNull(column) ? null : NativeStatement.ColumnReal(statement, column);

        private bool IsNull(int column) => NativeStatement.ColumnType(statement, column) == raw.SQLITE_NULL;
    }
}
