using System.Buffers;
using System.Text.Json;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>
/// Squares as GeoJSON polygons (RFC 7946): longitude, latitude on WGS84, rounded to six decimals (0.1 m), the ring closed and
/// anticlockwise. Each is written once and kept, because writing decimals is the dear part of a document.
/// </summary>
internal static class GeoJsonPolygon
{
    private static readonly OutlineStore<byte> Kept = new(Draw);

    /// <summary>The polygon as one JSON object, UTF-8; callers must not change it.</summary>
    public static byte[] Of(Square square) => Kept.Of(square);

    private static byte[] Draw(Square square)
    {
        var bytes = new ArrayBufferWriter<byte>(512);
        using var json = new Utf8JsonWriter(bytes);
        json.WriteStartObject();
        json.WriteString("type"u8, "Polygon"u8);
        json.WriteStartArray("coordinates"u8);
        json.WriteStartArray();
        foreach (var point in SquareOutline.InLatLon(square))
        {
            json.WriteStartArray();
            json.WriteNumberValue(Rounded(point.Longitude));
            json.WriteNumberValue(Rounded(point.Latitude));
            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>By way of decimal, which writes neither exponents nor a negative zero.</summary>
    internal static decimal Rounded(double degrees)
    {
        var rounded = Math.Round((decimal)degrees, 6);
        return rounded == 0 ? 0 : rounded;
    }
}
