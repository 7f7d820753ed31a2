using System.Text.Json;

namespace RangeMap.Maps;

/// <summary>
/// A style document of the MapLibre style specification, version 8, over the tiles of a taxon: the squares in the colours of the legend, which stands in
/// the metadata. It has no base map: put its source and layers over your own.
/// </summary>
public static class MapStyle
{
    /// <summary>Where the legend stands in the metadata.</summary>
    public const string LegendKey = "rangemap:legend";

    private const string SourceName = "squares";

    /// <summary>From this zoom on, squares of 10 km have room for an edge.</summary>
    private const int EdgeZoom = 6;

    /// <summary>Writes the document to a stream, which stays open.</summary>
    /// <param name="output">The stream.</param>
    /// <param name="name">Name of the map.</param>
    /// <param name="tileJson">Absolute address of the TileJSON of the tiles.</param>
    /// <param name="legend">The classes; none for a map without squares.</param>
    /// <param name="dark">True for a dark screen.</param>
    /// <param name="cancel">Stops the writing.</param>
    public static async Task WriteAsync(Stream output, string name, string tileJson, Legend legend, bool dark, CancellationToken cancel = default)
    {
        var json = new Utf8JsonWriter(output);
        await using var _ = json.ConfigureAwait(false);
        json.WriteStartObject();
        json.WriteNumber("version"u8, 8);
        json.WriteString("name"u8, name);
        json.WriteStartObject("metadata"u8);
        json.WritePropertyName(LegendKey);
        LegendJson.Write(json, legend);
        json.WriteEndObject();
        json.WriteStartObject("sources"u8);
        json.WriteStartObject(SourceName);
        json.WriteString("type"u8, "vector"u8);
        json.WriteString("url"u8, tileJson);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteStartArray("layers"u8);
        WriteFill(json, legend, dark);
        WriteEdges(json, dark);
        json.WriteEndArray();
        json.WriteEndObject();
        await json.FlushAsync(cancel).ConfigureAwait(false);
    }

    private static void WriteFill(Utf8JsonWriter json, Legend legend, bool dark)
    {
        StartLayer(json, "squares", "fill");
        json.WriteStartObject("layout"u8);
        // The newest class over the older ones, where squares of several grids overlap.
        json.WriteStartArray("fill-sort-key"u8);
        json.WriteStringValue("get"u8);
        json.WriteStringValue(legend.Property);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteStartObject("paint"u8);
        json.WritePropertyName("fill-color"u8);
        WriteColour(json, legend, dark);
        json.WriteNumber("fill-opacity"u8, 0.9);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteEdges(Utf8JsonWriter json, bool dark)
    {
        StartLayer(json, "square-edges", "line");
        json.WriteNumber("minzoom"u8, EdgeZoom);
        json.WriteStartObject("paint"u8);
        json.WriteString("line-color"u8, dark ? Palette.DarkPaper : Palette.LightPaper);
        json.WriteNumber("line-width"u8, 0.6);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void StartLayer(Utf8JsonWriter json, string id, string type)
    {
        json.WriteStartObject();
        json.WriteString("id"u8, id);
        json.WriteString("type"u8, type);
        json.WriteString("source"u8, SourceName);
        json.WriteString("source-layer"u8, PresenceTiles.LayerName);
    }

    /// <summary>A step of the property at the start of each class but the first; one colour where there is no more than one class.</summary>
    private static void WriteColour(Utf8JsonWriter json, Legend legend, bool dark)
    {
        var colours = legend.Classes.Select(part => dark ? part.Colour.Dark : part.Colour.Light).ToList();
        if (colours.Count < 2)
        {
            json.WriteStringValue(colours.Count == 1 ? colours[0] : dark ? Palette.Of(1)[0].Dark : Palette.Of(1)[0].Light);
            return;
        }

        json.WriteStartArray();
        json.WriteStringValue("step"u8);
        json.WriteStartArray();
        json.WriteStringValue("get"u8);
        json.WriteStringValue(legend.Property);
        json.WriteEndArray();
        json.WriteStringValue(colours[0]);
        for (var i = 1; i < colours.Count; i++)
        {
            json.WriteNumberValue(legend.Classes[i].From);
            json.WriteStringValue(colours[i]);
        }

        json.WriteEndArray();
    }
}
