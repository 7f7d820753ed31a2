using System.Globalization;
using System.Net;
using System.Text.Json;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>What a TileJSON document says that the map does not know.</summary>
/// <param name="TileUrl">Absolute address of a tile with {z}, {x} and {y} in it.</param>
/// <param name="Attribution">Whom to credit, plain text: maps show it as HTML, so it is escaped here. Null leaves it out.</param>
/// <param name="Version">The edition's number as a semantic version, such as 12.0.0; null leaves it out.</param>
public sealed record TileJsonOptions(string TileUrl, string? Attribution = null, string? Version = null)
{
    /// <summary>False where the tiles lack the layer of presence.</summary>
    public bool WithPresence { get; init; } = true;

    /// <summary>Layers beside that of presence.</summary>
    public IReadOnlyList<LayerTiles> Others { get; init; } = [];
}

/// <summary>Writes the TileJSON 3.0.0 description of a presence map's tiles in WebMercatorQuad, the only set that TileJSON knows.</summary>
public static class TileJsonDocument
{
    /// <summary>The greatest zoom of tiles; beyond it a map enlarges them. A 1 km square is some 90 pixels there.</summary>
    public const int MaxZoom = 14;

    private static readonly string[] Placeholders = ["{z}", "{x}", "{y}"];

    /// <summary>Writes the document to a stream, which stays open.</summary>
    /// <exception cref="ArgumentException">The address is not absolute or lacks a placeholder.</exception>
    public static async Task WriteAsync(
        Stream output, PresenceMap map, MapCaption caption, TileJsonOptions options, CancellationToken cancel = default)
    {
        CheckAddress(options.TileUrl);
        var json = new Utf8JsonWriter(output);
        await using var _ = json.ConfigureAwait(false);
        json.WriteStartObject();
        json.WriteString("tilejson"u8, "3.0.0"u8);
        json.WriteString("name"u8, caption.Taxon);
        if (options.Version is not null)
            json.WriteString("version"u8, options.Version);
        if (options.Attribution is not null)
            json.WriteString("attribution"u8, WebUtility.HtmlEncode(options.Attribution));
        WriteTexts(json, "tiles", [options.TileUrl]);
        json.WriteNumber("minzoom"u8, 0);
        json.WriteNumber("maxzoom"u8, MaxZoom);
        WriteBounds(json, map, options);
        json.WriteStartArray("vector_layers"u8);
        if (options.WithPresence)
            WriteLayer(json, PresenceTiles.LayerName, string.Create(CultureInfo.InvariantCulture, $"Squares of {map.Size.ToText()} with records"), Fields(map.Periods));
        foreach (var layer in options.Others.Select(other => other.Layer))
            WriteLayer(json, layer.Name, layer.Description, layer.Fields.Select(field => (field.Name, field.Description)));
        json.WriteEndArray();
        json.WriteString("edition"u8, caption.Edition);
        json.WriteEndObject();
        await json.FlushAsync(cancel).ConfigureAwait(false);
    }

    private static void CheckAddress(string url)
    {
        // Braces are no part of an address, so they are filled in before it is looked at.
        var filled = Placeholders.Aggregate(url, (text, part) => text.Replace(part, "0", StringComparison.Ordinal));
        var absolute = Uri.TryCreate(filled, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https";
        if (!absolute || !Placeholders.All(part => url.Contains(part, StringComparison.Ordinal)))
            throw new ArgumentException($"'{url}' must be an absolute http or https address with {{z}}, {{x}} and {{y}} in it.", nameof(url));
    }

    private static void WriteBounds(Utf8JsonWriter json, PresenceMap map, TileJsonOptions options)
    {
        var boxes = options.Others.Select(other => other.Box).OfType<DegreeBox>();
        if (options.WithPresence)
            boxes = boxes.Concat(map.Squares.Select(square => DegreeBox.Of(square.Square)));
        if (boxes.Aggregate((DegreeBox?)null, (all, box) => all?.Union(box) ?? box) is not { } whole)
            return;
        json.WriteStartArray("bounds"u8);
        foreach (var degrees in (ReadOnlySpan<double>)[whole.West, whole.South, whole.East, whole.North])
            json.WriteNumberValue(Math.Round((decimal)degrees, 6));
        json.WriteEndArray();
    }

    private static void WriteLayer(Utf8JsonWriter json, string name, string description, IEnumerable<(string Name, string Description)> fields)
    {
        json.WriteStartObject();
        json.WriteString("id"u8, name);
        json.WriteString("description"u8, description);
        json.WriteStartObject("fields"u8);
        foreach (var field in fields)
            json.WriteString(field.Name, field.Description);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>The properties of a square in tiles, with what they mean.</summary>
    internal static IEnumerable<(string Name, string Description)> Fields(IReadOnlyList<Period> periods)
    {
        yield return (PropertyNames.Square, "Text: grid reference of the square");
        yield return (PropertyNames.Grid, "Text: code of the national grid");
        yield return (PropertyNames.First, "Number: first year certainly present");
        yield return (PropertyNames.Last, "Number: last year certainly present");
        yield return (PropertyNames.Records, "Number: records, summed over the periods");
        yield return (PropertyNames.Period, "Number: index of the first period with records, from 0");
        yield return (PropertyNames.Latest, "Number: index of the last period with records");
        for (var i = 0; i < periods.Count; i++)
            yield return (PropertyNames.RecordsIn(i), $"Number: records in {periods[i].Text}; left out where there are none");
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
