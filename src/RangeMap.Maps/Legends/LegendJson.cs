using System.Text.Json;

namespace RangeMap.Maps;

/// <summary>Writes a legend as JSON: {"property","classes":[{"from","to","label","light","dark"}]}.</summary>
public static class LegendJson
{
    /// <summary>Writes the legend as one JSON object.</summary>
    public static void Write(Utf8JsonWriter json, Legend legend)
    {
        json.WriteStartObject();
        json.WriteString("property"u8, legend.Property);
        json.WriteStartArray("classes"u8);
        foreach (var part in legend.Classes)
        {
            json.WriteStartObject();
            json.WriteNumber("from"u8, part.From);
            json.WriteNumber("to"u8, part.To);
            json.WriteString("label"u8, part.Label);
            json.WriteString("light"u8, part.Colour.Light);
            json.WriteString("dark"u8, part.Colour.Dark);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Writes the legend of what became of squares to a stream, which stays open: {"property","classes":[{"value","label","light","dark"}]}.</summary>
    public static async Task WriteFatesAsync(Stream output, CancellationToken cancel = default)
    {
        var json = new Utf8JsonWriter(output);
        await using var _ = json.ConfigureAwait(false);
        json.WriteStartObject();
        json.WriteString("property"u8, PropertyNames.Change);
        json.WriteStartArray("classes"u8);
        foreach (var part in FateLegend.Classes)
        {
            json.WriteStartObject();
            json.WriteString("value"u8, part.Value);
            json.WriteString("label"u8, part.Label);
            json.WriteString("light"u8, part.Colour.Light);
            json.WriteString("dark"u8, part.Colour.Dark);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        await json.FlushAsync(cancel).ConfigureAwait(false);
    }

    /// <summary>Writes the legend to a stream, which stays open.</summary>
    public static async Task WriteAsync(Stream output, Legend legend, CancellationToken cancel = default)
    {
        var json = new Utf8JsonWriter(output);
        await using var _ = json.ConfigureAwait(false);
        Write(json, legend);
        await json.FlushAsync(cancel).ConfigureAwait(false);
    }
}
