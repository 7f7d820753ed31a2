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
