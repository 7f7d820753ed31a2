using System.Text.Json;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Reads the lines of borders between nations from GeoJSON.</summary>
internal static class BorderLines
{
    /// <summary>The lines of the features whose property "kind" is "nation".</summary>
    /// <exception cref="FormatException">The stream holds no GeoJSON of lines.</exception>
    public static IReadOnlyList<LatLon[]> Read(Stream geoJson)
    {
        try
        {
            using var document = JsonDocument.Parse(geoJson);
            var nation = document.RootElement.GetProperty("features").EnumerateArray().Where(feature => feature.GetProperty("properties").GetProperty("kind").ValueEquals("nation"));
            return [.. nation.SelectMany(feature => feature.GetProperty("geometry").GetProperty("coordinates").EnumerateArray()).Select(Line)];
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException or KeyNotFoundException or IndexOutOfRangeException)
        {
            throw new FormatException("This is no GeoJSON of border lines.", fault);
        }
    }

    private static LatLon[] Line(JsonElement line) => [.. line.EnumerateArray().Select(point => new LatLon(point[1].GetDouble(), point[0].GetDouble()))];
}
