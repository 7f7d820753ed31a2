using System.Text.Json;
using Parquet;
using Parquet.Schema;

namespace RangeMap.Maps;

/// <summary>A table as GeoParquet 1.1.0: places as well-known binary in longitude and latitude (OGC:CRS84), with a box for each that readers skip by.</summary>
public static class ParquetExport
{
    private const string GeometryColumn = "geometry", BoxColumn = "bbox";

    private static readonly string[] Edges = ["xmin", "ymin", "xmax", "ymax"];

    /// <summary>Rows held in memory at once; each block is written before the next is begun.</summary>
    internal const int RowsABlock = 50_000;

    /// <summary>Writes the table to a stream that tells its position, which stays open.</summary>
    public static async Task WriteAsync(Stream output, ExportTable table, ExportSource source, IEnumerable<ExportRow> rows, CancellationToken cancel = default)
    {
        var columns = table.Columns.Select(ParquetColumn.Of).ToArray();
        var geometry = new DataField<byte[]>(GeometryColumn, false);
        var edges = Edges.Select(edge => new DataField<double>(edge)).ToArray();
        var schema = new ParquetSchema([.. columns.Select(column => column.Field), geometry, new StructField(BoxColumn, edges)]);
        var block = new GeometryBlock(geometry, edges);
        await using var writer = await ParquetWriter.CreateAsync(schema, output, new ParquetOptions { CompressionMethod = CompressionMethod.Snappy, UseDateOnlyTypeForDates = true }, cancellationToken: cancel).ConfigureAwait(false);
        var whole = default(DegreeBox?);
        foreach (var row in rows)
        {
            for (var i = 0; i < columns.Length; i++)
                columns[i].Add(row.Values[i]);
            var box = WellKnownBinary.BoxOf(table, row);
            whole = whole?.Union(box) ?? box;
            block.Add(WellKnownBinary.Of(table, row), box);
            if (block.Count == RowsABlock)
                await WriteBlockAsync(writer, columns, block, cancel).ConfigureAwait(false);
        }

        if (block.Count > 0)
            await WriteBlockAsync(writer, columns, block, cancel).ConfigureAwait(false);
        writer.CustomMetadata = new Dictionary<string, string> { ["geo"] = Geo(table, whole), ["rangemap"] = await SourceAsync(table, source, cancel).ConfigureAwait(false) };
    }

    private static async Task WriteBlockAsync(ParquetWriter writer, ParquetColumn[] columns, GeometryBlock block, CancellationToken cancel)
    {
        using var group = writer.CreateRowGroup();
        foreach (var column in columns)
            await column.WriteAsync(group, cancel).ConfigureAwait(false);
        await block.WriteAsync(group, cancel).ConfigureAwait(false);
        group.CompleteValidate();
    }

    private static string Geo(ExportTable table, DegreeBox? box) => JsonSerializer.Serialize(new Dictionary<string, object>
    {
        ["version"] = "1.1.0",
        ["primary_column"] = GeometryColumn,
        ["columns"] = new Dictionary<string, object> { [GeometryColumn] = Column(table, box) },
    });

    private static Dictionary<string, object> Column(ExportTable table, DegreeBox? box)
    {
        var column = new Dictionary<string, object>
        {
            ["encoding"] = "WKB",
            ["geometry_types"] = new[] { table.Geometry == ExportGeometry.Square ? "Polygon" : "Point" },
            ["covering"] = new { bbox = Edges.ToDictionary(edge => edge, edge => new[] { BoxColumn, edge }) },
        };
        if (table.Geometry == ExportGeometry.Square)
            column["orientation"] = "counterclockwise";
        if (box is { } known)
            column["bbox"] = new[] { known.West, known.South, known.East, known.North };
        return column;
    }

    private static async Task<string> SourceAsync(ExportTable table, ExportSource source, CancellationToken cancel)
    {
        using var json = new MemoryStream();
        await CsvwMetadata.WriteAsync(json, table, source, table.Name + ".csv", cancel).ConfigureAwait(false);
        return System.Text.Encoding.UTF8.GetString(json.ToArray());
    }
}
