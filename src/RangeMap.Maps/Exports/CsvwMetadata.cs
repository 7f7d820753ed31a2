using System.Text.Json;

namespace RangeMap.Maps;

/// <summary>The description of a CSV export after CSV on the Web (W3C, Metadata Vocabulary for Tabular Data): columns, kinds, terms, key, source and licences.</summary>
public static class CsvwMetadata
{
    /// <summary>Writes the description to a stream, which stays open.</summary>
    /// <param name="output">The stream.</param>
    /// <param name="table">The table.</param>
    /// <param name="source">Where the rows came from.</param>
    /// <param name="csvName">Name of the CSV file, as seen from the description.</param>
    /// <param name="cancel">Stops the writing.</param>
    public static async Task WriteAsync(Stream output, ExportTable table, ExportSource source, string csvName, CancellationToken cancel = default)
    {
        var json = new Utf8JsonWriter(output, new() { Indented = true });
        await using var _ = json.ConfigureAwait(false);
        json.WriteStartObject();
        json.WriteString("@context"u8, "http://www.w3.org/ns/csvw"u8);
        json.WriteString("url"u8, Uri.EscapeDataString(csvName));
        json.WriteString("dc:title"u8, table.Title);
        json.WriteString("dc:description"u8, table.Description);
        json.WriteString("dc:source"u8, source.Title);
        json.WriteString("dc:identifier"u8, source.Edition);
        json.WriteString("dc:type"u8, source.StateWord);
        json.WriteString("dc:date"u8, source.Published);
        json.WriteString("dc:bibliographicCitation"u8, source.Citation);
        WriteLicences(json, source);
        WriteQuestion(json, source);
        json.WriteStartObject("dialect"u8);
        json.WriteString("encoding"u8, "utf-8"u8);
        json.WriteBoolean("header"u8, true);
        json.WriteString("lineTerminators"u8, "\r\n"u8);
        json.WriteEndObject();
        WriteSchema(json, table);
        json.WriteEndObject();
        await json.FlushAsync(cancel).ConfigureAwait(false);
    }

    private static void WriteLicences(Utf8JsonWriter json, ExportSource source)
    {
        json.WriteStartArray("dc:license"u8);
        foreach (var text in source.Licences.Select(share => share.Url ?? share.Licence).OfType<string>().Distinct(StringComparer.Ordinal))
            json.WriteStringValue(text);
        json.WriteEndArray();
        json.WriteStartArray("dc:rights"u8);
        foreach (var share in source.Licences)
            json.WriteStringValue(FormattableString.Invariant($"{share.Title ?? share.Dataset}: {share.Licence ?? share.Url ?? "no licence stated"} ({share.Records} records)"));
        json.WriteEndArray();
    }

    private static void WriteQuestion(Utf8JsonWriter json, ExportSource source)
    {
        json.WriteStartArray("notes"u8);
        foreach (var (name, value) in source.Question)
        {
            json.WriteStartObject();
            json.WriteString("name"u8, name);
            json.WriteString("value"u8, value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteSchema(Utf8JsonWriter json, ExportTable table)
    {
        json.WriteStartObject("tableSchema"u8);
        json.WriteStartArray("columns"u8);
        foreach (var column in table.Columns)
        {
            json.WriteStartObject();
            json.WriteString("name"u8, column.Name);
            json.WriteString("titles"u8, column.Name);
            json.WriteString("datatype"u8, DataType(column.Kind));
            json.WriteBoolean("required"u8, column.Required);
            if (column.Term is not null)
                json.WriteString("propertyUrl"u8, column.Term);
            json.WriteString("dc:description"u8, column.Description);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("primaryKey"u8);
        foreach (var name in table.Key)
            json.WriteStringValue(name);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>The kind's name among the datatypes of XML Schema that CSV on the Web uses.</summary>
    public static string DataType(ExportKind kind) => kind switch
    {
        ExportKind.Whole => "integer",
        ExportKind.Number => "decimal",
        ExportKind.Day => "date",
        ExportKind.Truth => "boolean",
        _ => "string",
    };
}
