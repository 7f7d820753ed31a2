using System.Globalization;
using DuckDB.NET.Data;
using RangeMap.Records;
using RangeMap.TestKit;

namespace RangeMap.Maps.Tests.Exports;

/// <summary>What is exported is read back equal by an independent engine (DuckDB 1.5).</summary>
public sealed class ReadBackTests
{
    public static TheoryData<string> Tables => [.. ExportTables.All.Select(table => table.Name)];

    [Theory]
    [MemberData(nameof(Tables))]
    public async Task ParquetIsReadBackEqual(string name)
    {
        using var folder = new TemporaryFolder();
        var table = ExportTables.All.Single(known => known.Name == name);
        var file = folder.File("t.parquet");
        await TableExport.WriteAsync(file, ExportFormat.Parquet, table, SomeRows.Source, SomeRows.Of(table, 300));
        Assert.Equal(SomeRows.Of(table, 300).Select(row => Text(table, row, guarded: false)), Read($"SELECT * EXCLUDE (geometry, bbox) FROM read_parquet('{file}')", table));
        Assert.Equal(0L, One($"SELECT count(*) FROM read_parquet('{file}') WHERE bbox.xmin > bbox.xmax OR bbox.ymin > bbox.ymax OR geometry IS NULL"));
        Assert.Contains("1.1.0", (string)One($"SELECT decode(value) FROM parquet_kv_metadata('{file}') WHERE decode(key) = 'geo'"), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public async Task CsvIsReadBackEqualButForTheGuard(string name)
    {
        using var folder = new TemporaryFolder();
        var table = ExportTables.All.Single(known => known.Name == name);
        var file = folder.File("t.csv");
        await TableExport.WriteAsync(file, ExportFormat.Csv, table, SomeRows.Source, SomeRows.Of(table, 300));
        Assert.Equal(
            SomeRows.Of(table, 300).Select(row => Text(table, row, guarded: true)),
            Read($"SELECT * FROM read_csv('{file}', header = true, all_varchar = true, delim = ',', quote = '\"', escape = '\"', strict_mode = false)", null));
    }

    [Fact]
    public async Task AParquetFileWithoutRowsIsValid()
    {
        using var folder = new TemporaryFolder();
        var file = folder.File("t.parquet");
        await TableExport.WriteAsync(file, ExportFormat.Parquet, ExportTables.Presence, SomeRows.Source, []);
        Assert.Equal(0L, One($"SELECT count(*) FROM read_parquet('{file}')"));
    }

    private static string Text(ExportTable table, ExportRow row, bool guarded) => string.Join('|', table.Columns.Select((column, i) => row.Values[i] switch
    {
        { HasValue: false } => "",
        { Text: { } text } => guarded ? FormulaGuard.Guard(text) : text,
        var value => column.Kind switch
        {
            ExportKind.Day => DateOnly.FromDayNumber((int)value.Whole).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ExportKind.Truth => value.Whole == 0 ? "false" : "true",
            ExportKind.Number => value.Number.ToString(CultureInfo.InvariantCulture),
            _ => value.Whole.ToString(CultureInfo.InvariantCulture),
        },
    }));

    private static List<string> Read(string sql, ExportTable? table)
    {
        var rows = new List<string>();
        using var connection = new DuckDBConnection("DataSource=:memory:");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        while (reader.Read())
            rows.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(i => reader.IsDBNull(i) ? "" : Cell(reader.GetValue(i)))));
        Assert.True(table is null || reader.FieldCount == table.Columns.Count);
        return rows;
    }

    private static string Cell(object value) => value switch
    {
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        DateTime day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        bool truth => truth ? "true" : "false",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };

    private static object One(string sql)
    {
        using var connection = new DuckDBConnection("DataSource=:memory:");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar()!;
    }
}
