using System.Text;
using RangeMap.Grids;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>A region by its name: one that the user loaded, or a nation of gis-data.</summary>
/// <param name="Name">Its name, as it was loaded.</param>
/// <param name="Polygons">Its polygons.</param>
internal sealed record NamedRegion(string Name, IReadOnlyList<GeoPolygon> Polygons)
{
    private const int MostNamed = 20;

    private readonly NamedAreas _area = NamedAreas.Of(Name, Polygons);

    /// <summary>True when the region reaches into the square.</summary>
    public bool Touches(Square square) => _area.KmOutside(Name, square) == 0;

    /// <summary>The region of a name; case does not count.</summary>
    /// <exception cref="UserException">There is none.</exception>
    public static NamedRegion Find(DataSnapshot data, string name)
    {
        var regions = data.Answers.GetOrMake("named regions", () => Read(data));
        return regions.TryGetValue(name.Trim(), out var region)
            ? region
            : throw new UserException($"There is no region '{name}'.", "region", $"Use one of {string.Join(", ", regions.Values.Select(known => known.Name).Order(StringComparer.Ordinal).Take(MostNamed))}; rangemap regions loads others.") { IsArgument = true };
    }

    private static Dictionary<string, NamedRegion> Read(DataSnapshot data)
    {
        using var nations = BaseData.Open("nations.geojson");
        var regions = GeoJsonPolygons.Read(nations, "nation").Where(read => read.Property is not null)
            .GroupBy(read => read.Property!, read => read.Polygon).ToDictionary(group => group.Key, group => new NamedRegion(group.Key, [.. group]), StringComparer.OrdinalIgnoreCase);
        foreach (var loaded in data.Regions)
            regions[loaded.Name] = new(loaded.Name, [.. GeoJsonPolygons.Read(new MemoryStream(Encoding.UTF8.GetBytes(loaded.GeoJson)), RegionStore.NameProperty).Select(read => read.Polygon)]);
        return regions;
    }
}
