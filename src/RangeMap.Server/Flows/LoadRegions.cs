using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using RangeMap.Grids;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Loads named polygons of a GeoJSON file as regions.</summary>
internal static class LoadRegions
{
    private const long MostBytes = 200_000_000;

    /// <summary>Loads a file; features of the same name make one region.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="path">The file.</param>
    /// <param name="property">The property that holds the name of each feature.</param>
    /// <param name="clock">Tells the time.</param>
    /// <returns>The names that were loaded.</returns>
    /// <exception cref="UserException">The file cannot be read, holds no named polygon, or lies outside the islands.</exception>
    public static IReadOnlyList<string> Run(DataFolder folder, string path, string property, TimeProvider clock)
    {
        var regions = Features(Read(path), property, path).GroupBy(feature => feature.Name, feature => feature.Feature, StringComparer.OrdinalIgnoreCase)
            .Select(group => (Name: group.Key, GeoJson: CollectionOf(group))).ToList();
        if (regions.Count == 0)
            throw new UserException($"No feature has a property \"{property}\" with a name.", path, "Name the property that holds the names with --name-property.");
        foreach (var (name, geoJson) in regions)
            Check(name, geoJson, path);
        new RegionStore(folder.Database).Keep(regions, clock.GetUtcNow());
        return [.. regions.Select(region => region.Name)];
    }

    private static JsonNode Read(string path)
    {
        if (new FileInfo(path).Length > MostBytes)
            throw new UserException("The file is longer than 200 MB.", path, "Simplify the polygons; 50 m is finer than any square needs.");
        try
        {
            using var stream = File.OpenRead(path);
            return JsonNode.Parse(stream) ?? throw new JsonException("null");
        }
        catch (JsonException)
        {
            throw new UserException("This is no GeoJSON.", path, "Save the regions as a GeoJSON feature collection in longitude and latitude.");
        }
    }

    private static IEnumerable<(string Name, JsonNode Feature)> Features(JsonNode root, string property, string path)
    {
        if (root is not JsonObject collection || collection["features"] is not JsonArray features)
            throw new UserException("This is no GeoJSON feature collection.", path, "Save the regions as a GeoJSON feature collection in longitude and latitude.");
        foreach (var feature in features)
        {
            if (feature is JsonObject { } found && found["properties"] is JsonObject properties && properties[property] is JsonValue value && value.ToString().Trim() is { Length: > 0 } name)
                yield return (name, found);
        }
    }

    private static string CollectionOf(IGrouping<string, JsonNode> group)
    {
        var features = group.Select(feature => new JsonObject
        {
            ["type"] = "Feature",
            ["properties"] = new JsonObject { [RegionStore.NameProperty] = group.Key },
            ["geometry"] = feature["geometry"]?.DeepClone(),
        });
        return new JsonObject { ["type"] = "FeatureCollection", ["features"] = new JsonArray([.. features]) }.ToJsonString();
    }

    private static void Check(string name, string geoJson, string path)
    {
        try
        {
            if (NamedAreas.Read(new MemoryStream(Encoding.UTF8.GetBytes(geoJson)), RegionStore.NameProperty).Names.Count > 0)
                return;
        }
        catch (FormatException)
        {
            // The same words for every way in which a polygon can be none.
        }

        throw new UserException($"The region \"{name}\" has no closed polygon in longitude and latitude.", path, "Save it as Polygon or MultiPolygon in WGS84; nothing was loaded.");
    }
}
