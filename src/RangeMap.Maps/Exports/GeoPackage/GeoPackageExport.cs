using System.Globalization;
using System.Text;
using Microsoft.Data.Sqlite;

namespace RangeMap.Maps;

/// <summary>A table as an OGC GeoPackage 1.3: one layer in longitude and latitude (EPSG:4326) with its spatial index, with where it came from and its data dictionary as metadata.</summary>
public static class GeoPackageExport
{
    /// <summary>Writes the package to a new file: SQLite writes back and forth, which no stream allows.</summary>
    /// <exception cref="IOException">There is a file of this name already.</exception>
    public static async Task WriteAsync(string path, ExportTable table, ExportSource source, IEnumerable<ExportRow> rows, CancellationToken cancel = default)
    {
        if (File.Exists(path))
            throw new IOException($"The file {path} is there already.");
        var text = new SqliteConnectionStringBuilder { DataSource = path, Pooling = false };
        using var connection = new SqliteConnection(text.ToString());
        connection.Open();
        Run(connection, GeoPackageSql.Prepare);
        using (var transaction = connection.BeginTransaction())
        {
            Run(connection, GeoPackageSql.Tables);
            foreach (var (name, id, organisation, definition, description) in ReferenceSystems.All)
                Run(connection, GeoPackageSql.AddSystem, ("$name", name), ("$id", id), ("$organization", organisation), ("$number", id), ("$definition", definition), ("$description", description));
            Run(connection, GeoPackageSql.MakeTable(table));
            Run(connection, SpatialIndexSql.Make(table));
            var box = AddRows(connection, table, rows, cancel);
            Describe(connection, table, source, box);
            Run(connection, SpatialIndexSql.Triggers(table));
            Run(connection, SpatialIndexSql.AddExtension, ("$table", table.Name));
            await AddMetadataAsync(connection, table, source, cancel).ConfigureAwait(false);
            transaction.Commit();
        }
    }

    private static DegreeBox? AddRows(SqliteConnection connection, ExportTable table, IEnumerable<ExportRow> rows, CancellationToken cancel)
    {
        using var command = Command(connection, GeoPackageSql.AddRow(table));
        var geometry = command.Parameters.Add("$geom", SqliteType.Blob);
        var cells = table.Columns.Select((column, i) => command.Parameters.Add(FormattableString.Invariant($"$c{i}"), SqliteTypeOf(column.Kind))).ToArray();
        using var index = Command(connection, SpatialIndexSql.AddBox(table));
        var number = index.Parameters.Add("$fid", SqliteType.Integer);
        var edges = SpatialIndexSql.Edges.Select(name => index.Parameters.Add(name, SqliteType.Real)).ToArray();
        DegreeBox? whole = null;
        long fid = 0;
        foreach (var row in rows)
        {
            cancel.ThrowIfCancellationRequested();
            var box = WellKnownBinary.BoxOf(table, row);
            whole = whole?.Union(box) ?? box;
            geometry.Value = GeometryBlob.Of(box, WellKnownBinary.Of(table, row), withBox: table.Geometry == ExportGeometry.Square);
            for (var i = 0; i < cells.Length; i++)
                cells[i].Value = Cell(table.Columns[i].Kind, row.Values[i]);
            command.ExecuteNonQuery();
            number.Value = ++fid;
            (edges[0].Value, edges[1].Value, edges[2].Value, edges[3].Value) = (box.West, box.East, box.South, box.North);
            index.ExecuteNonQuery();
        }

        return whole;
    }

    private static void Describe(SqliteConnection connection, ExportTable table, ExportSource source, DegreeBox? box)
    {
        Run(
            connection, GeoPackageSql.AddContents, ("$table", table.Name), ("$title", table.Title), ("$description", $"{table.Description} {source.Citation}"), ("$changed", Changed(source)),
            ("$west", box?.West), ("$south", box?.South), ("$east", box?.East), ("$north", box?.North));
        Run(connection, GeoPackageSql.AddGeometry, ("$table", table.Name), ("$type", GeoPackageSql.GeometryType(table)));
    }

    private static async Task AddMetadataAsync(SqliteConnection connection, ExportTable table, ExportSource source, CancellationToken cancel)
    {
        using var json = new MemoryStream();
        await CsvwMetadata.WriteAsync(json, table, source, table.Name + ".csv", cancel).ConfigureAwait(false);
        Run(connection, GeoPackageSql.AddMetadataExtension);
        Run(connection, GeoPackageSql.AddMetadata, ("$json", Encoding.UTF8.GetString(json.ToArray())));
        Run(connection, GeoPackageSql.AddReference, ("$table", table.Name), ("$changed", Changed(source)));
    }

    /// <summary>When the state of the data was made, in the one form that the standard allows; the beginning of time stands for a folder without data.</summary>
    private static string Changed(ExportSource source) =>
        (DateTimeOffset.TryParse(source.Published, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at) ? at : DateTimeOffset.UnixEpoch)
        .ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);

    private static object Cell(ExportKind kind, in ExportValue value)
    {
        if (!value.HasValue)
            return DBNull.Value;
        return kind switch
        {
            ExportKind.Whole or ExportKind.Truth => value.Whole,
            ExportKind.Number => value.Number,
            ExportKind.Day => value.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            _ => value.Text!,
        };
    }

    private static SqliteType SqliteTypeOf(ExportKind kind) => kind switch
    {
        ExportKind.Whole or ExportKind.Truth => SqliteType.Integer,
        ExportKind.Number => SqliteType.Real,
        _ => SqliteType.Text,
    };

    private static void Run(SqliteConnection connection, string sql, params (string Name, object? Value)[] values)
    {
        using var command = Command(connection, sql);
        foreach (var (name, value) in values)
            command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        command.ExecuteNonQuery();
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql)
    {
        var command = connection.CreateCommand();
        // Every statement is written in GeoPackageSql, with the names of the defined columns only; all values are bound.
#pragma warning disable CA2100
        command.CommandText = sql;
#pragma warning restore CA2100
        return command;
    }
}
