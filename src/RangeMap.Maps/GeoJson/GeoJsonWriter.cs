using System.Text.Json;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>
/// Writes GeoJSON (RFC 7946) to a stream piece by piece, so that a large map never stands whole in memory.
/// </summary>
internal sealed class GeoJsonWriter(Stream output) : IAsyncDisposable
{
    /// <summary>The media type of RFC 7946.</summary>
    public const string MediaType = "application/geo+json";

    private const int FlushBytes = 64 * 1024;

    public Utf8JsonWriter Json { get; } = new(output);

    /// <summary>Starts a feature collection; foreign members follow, then <see cref="StartFeatures"/>.</summary>
    public void StartCollection()
    {
        Json.WriteStartObject();
        Json.WriteString("type"u8, "FeatureCollection"u8);
    }

    public void StartFeatures() => Json.WriteStartArray("features"u8);

    /// <summary>Starts the feature of a square up to its properties, which the caller writes next, then <see cref="EndFeatureAsync"/>.</summary>
    public void StartFeature(Square square, string name)
    {
        Json.WriteStartObject();
        Json.WriteString("type"u8, "Feature"u8);
        Json.WriteString("id"u8, name);
        Json.WritePropertyName("geometry"u8);
        Json.WriteRawValue(GeoJsonPolygon.Of(square), skipInputValidation: true);
        Json.WriteStartObject("properties"u8);
        Json.WriteString(PropertyNames.Square, name);
        Json.WriteString(PropertyNames.Grid, NationalGrid.Get(square.Grid).Code);
    }

    /// <summary>Starts a feature of another shape up to its properties.</summary>
    public void StartFeature(string id, Action writeGeometry)
    {
        Json.WriteStartObject();
        Json.WriteString("type"u8, "Feature"u8);
        Json.WriteString("id"u8, id);
        Json.WritePropertyName("geometry"u8);
        writeGeometry();
        Json.WriteStartObject("properties"u8);
    }

    /// <summary>Writes lines as one geometry.</summary>
    public void WriteLines(IEnumerable<IReadOnlyList<LatLon>> lines) => WriteLines(Json, lines);

    /// <summary>Writes lines as one geometry to a writer.</summary>
    public static void WriteLines(Utf8JsonWriter json, IEnumerable<IReadOnlyList<LatLon>> lines)
    {
        StartGeometry(json, "MultiLineString"u8);
        foreach (var line in lines)
            WritePoints(json, line);
        EndGeometry(json);
    }

    /// <summary>Writes areas, each of an outer ring and its holes, as one geometry.</summary>
    public void WriteAreas(IEnumerable<IReadOnlyList<LatLon[]>> areas)
    {
        StartGeometry(Json, "MultiPolygon"u8);
        foreach (var area in areas)
        {
            Json.WriteStartArray();
            foreach (var ring in area)
                WritePoints(Json, ring);
            Json.WriteEndArray();
        }

        EndGeometry(Json);
    }

    private static void StartGeometry(Utf8JsonWriter json, ReadOnlySpan<byte> type)
    {
        json.WriteStartObject();
        json.WriteString("type"u8, type);
        json.WriteStartArray("coordinates"u8);
    }

    private static void EndGeometry(Utf8JsonWriter json)
    {
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePoints(Utf8JsonWriter json, IReadOnlyList<LatLon> points)
    {
        json.WriteStartArray();
        foreach (var point in points)
        {
            json.WriteStartArray();
            json.WriteNumberValue(GeoJsonPolygon.Rounded(point.Longitude));
            json.WriteNumberValue(GeoJsonPolygon.Rounded(point.Latitude));
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a property that is a number, rounded, or null.</summary>
    public void WriteNumber(string name, double? value, int decimals)
    {
        if (value is { } number)
            Json.WriteNumber(name, Math.Round((decimal)number, decimals));
        else
            Json.WriteNull(name);
    }

    public async ValueTask EndFeatureAsync(CancellationToken cancel)
    {
        Json.WriteEndObject();
        Json.WriteEndObject();
        if (Json.BytesPending > FlushBytes)
            await Json.FlushAsync(cancel).ConfigureAwait(false);
    }

    public async Task EndCollectionAsync(CancellationToken cancel)
    {
        Json.WriteEndArray();
        Json.WriteEndObject();
        await Json.FlushAsync(cancel).ConfigureAwait(false);
    }

    /// <summary>Releases the writer's memory; the stream stays open.</summary>
    public ValueTask DisposeAsync() => Json.DisposeAsync();
}
