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
public sealed record TileJsonOptions(string TileUrl, string? Attribution = null, string? Version = null);

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
        WriteBounds(json, map);
        WriteLayer(json, map);
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

    private static void WriteBounds(Utf8JsonWriter json, PresenceMap map)
    {
        if (map.Squares.Count == 0)
            return;
        double west = 180, south = 90, east = -180, north = -90;
        foreach (var point in map.Squares.SelectMany(square => Outlines.InLatLon.Of(square.Square)))
        {
            (west, south) = (Math.Min(west, point.Longitude), Math.Min(south, point.Latitude));
            (east, north) = (Math.Max(east, point.Longitude), Math.Max(north, point.Latitude));
        }

        json.WriteStartArray("bounds"u8);
        foreach (var degrees in (ReadOnlySpan<double>)[west, south, east, north])
            json.WriteNumberValue(Math.Round((decimal)degrees, 6));
        json.WriteEndArray();
    }

    private static void WriteLayer(Utf8JsonWriter json, PresenceMap map)
    {
        json.WriteStartArray("vector_layers"u8);
        json.WriteStartObject();
        json.WriteString("id"u8, PresenceTiles.LayerName);
        json.WriteString("description"u8, string.Create(CultureInfo.InvariantCulture, $"Squares of {map.Size.ToText()} with records"));
        json.WriteStartObject("fields"u8);
        foreach (var (name, description) in Fields(map.Periods))
            json.WriteString(name, description);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
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
