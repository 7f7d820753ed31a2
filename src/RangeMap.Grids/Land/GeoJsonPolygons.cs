using System.Text.Json;

namespace RangeMap.Grids;

/// <summary>Reads the polygons of a GeoJSON feature collection (RFC 7946); features of other kinds are passed over.</summary>
public static class GeoJsonPolygons
{
    /// <summary>Every polygon, one by one, with the text of a property of its feature (null where the feature lacks it).</summary>
    /// <param name="geoJson">A feature collection in longitude and latitude (WGS84).</param>
    /// <param name="property">Name of the property to give with each polygon, such as "part".</param>
    /// <exception cref="FormatException">The text is no JSON or no feature collection, or a ring is not closed.</exception>
    public static IReadOnlyList<(string? Property, GeoPolygon Polygon)> Read(Stream geoJson, string property)
    {
        try
        {
            using var document = JsonDocument.Parse(geoJson);
            return [.. document.RootElement.GetProperty("features").EnumerateArray().SelectMany(feature => OfFeature(feature, property))];
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException or KeyNotFoundException or ArgumentException or IndexOutOfRangeException)
        {
            throw new FormatException("This is no GeoJSON feature collection of closed polygons.", fault);
        }
    }

    private static IEnumerable<(string? Property, GeoPolygon Polygon)> OfFeature(JsonElement feature, string property)
    {
        var geometry = feature.GetProperty("geometry");
        var text = feature.GetProperty("properties").TryGetProperty(property, out var value) ? value.ToString() : null;
        IEnumerable<JsonElement> polygons = geometry.GetProperty("type").GetString() switch
        {
            "Polygon" => [geometry.GetProperty("coordinates")],
            "MultiPolygon" => geometry.GetProperty("coordinates").EnumerateArray(),
            _ => [],
        };
        return polygons.Select(rings => (text, new GeoPolygon([.. rings.EnumerateArray().Select(ReadRing)])));
    }

    private static LatLon[] ReadRing(JsonElement ring) => [.. ring.EnumerateArray().Select(point => new LatLon(point[1].GetDouble(), point[0].GetDouble()))];
}
