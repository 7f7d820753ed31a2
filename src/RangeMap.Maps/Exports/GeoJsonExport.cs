using System.Globalization;
using System.Text.Json;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>A table as a GeoJSON feature collection (RFC 7946): a feature a row, its cells as properties; empty cells are null.</summary>
public static class GeoJsonExport
{
    private const int FlushBytes = 256 * 1024;

    /// <summary>Writes the table to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, ExportTable table, ExportSource source, IEnumerable<ExportRow> rows, CancellationToken cancel = default)
    {
        var json = new Utf8JsonWriter(output);
        await using var _ = json.ConfigureAwait(false);
        var names = table.Columns.Select(column => JsonEncodedText.Encode(column.Name)).ToArray();
        json.WriteStartObject();
        json.WriteString("type"u8, "FeatureCollection"u8);
        json.WriteString("name"u8, table.Name);
        WriteSource(json, source);
        json.WriteStartArray("features"u8);
        foreach (var row in rows)
        {
            WriteFeature(json, table, names, row);
            if (json.BytesPending > FlushBytes)
                await json.FlushAsync(cancel).ConfigureAwait(false);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        await json.FlushAsync(cancel).ConfigureAwait(false);
    }

    private static void WriteSource(Utf8JsonWriter json, ExportSource source)
    {
        json.WriteString("source"u8, source.Title);
        json.WriteString("edition"u8, source.Edition);
        json.WriteString("state"u8, source.StateWord);
        json.WriteString("citation"u8, source.Citation);
        json.WriteStartObject("question"u8);
        foreach (var (name, value) in source.Question)
            json.WriteString(name, value);
        json.WriteEndObject();
        json.WriteStartArray("licences"u8);
        foreach (var text in source.Licences.Select(share => share.Url ?? share.Licence ?? "no licence stated").Distinct(StringComparer.Ordinal))
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static void WriteFeature(Utf8JsonWriter json, ExportTable table, ReadOnlySpan<JsonEncodedText> names, ExportRow row)
    {
        json.WriteStartObject();
        WriteBody(json, table, names, row);
        json.WriteEndObject();
    }

    /// <summary>Writes type, geometry and properties of a feature into an object that was begun.</summary>
    public static void WriteFeature(Utf8JsonWriter json, ExportTable table, ExportRow row) =>
        WriteBody(json, table, table.Columns.Select(column => JsonEncodedText.Encode(column.Name)).ToArray(), row);

    private static void WriteBody(Utf8JsonWriter json, ExportTable table, ReadOnlySpan<JsonEncodedText> names, ExportRow row)
    {
        json.WriteString("type"u8, "Feature"u8);
        json.WritePropertyName("geometry"u8);
        switch (table.Geometry)
        {
            case ExportGeometry.Square:
                json.WriteRawValue(GeoJsonPolygon.Of(row.Square), skipInputValidation: true);
                break;
            case ExportGeometry.Lines:
                GeoJsonWriter.WriteLines(json, row.Lines);
                break;
            default:
                WritePoint(json, row.Point);
                break;
        }

        json.WriteStartObject("properties"u8);
        for (var i = 0; i < names.Length; i++)
            WriteCell(json, names[i], table.Columns[i].Kind, row.Values[i]);
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, LatLon point)
    {
        json.WriteStartObject();
        json.WriteString("type"u8, "Point"u8);
        json.WriteStartArray("coordinates"u8);
        json.WriteNumberValue(Math.Round((decimal)point.Longitude, 6));
        json.WriteNumberValue(Math.Round((decimal)point.Latitude, 6));
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteCell(Utf8JsonWriter json, JsonEncodedText name, ExportKind kind, in ExportValue value)
    {
        if (!value.HasValue)
        {
            json.WriteNull(name);
            return;
        }

        switch (kind)
        {
            case ExportKind.Whole:
                json.WriteNumber(name, value.Whole);
                break;
            case ExportKind.Number:
                json.WriteNumber(name, value.Number);
                break;
            case ExportKind.Day:
                json.WriteString(name, value.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                break;
            case ExportKind.Truth:
                json.WriteBoolean(name, value.Whole != 0);
                break;
            default:
                json.WriteString(name, value.Text);
                break;
        }
    }
}
