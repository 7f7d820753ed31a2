using System.Text;
using RangeMap.Grids;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>
/// The regions that questions and the taxon list may name: the nations of gis-data and those that the user loaded, of which one with a nation's name takes its
/// place. Read when first asked for.
/// </summary>
internal sealed class KnownRegions : IKnownAreas
{
    private const int MostNamed = 20;

    private readonly Lazy<Dictionary<string, NamedRegion>> _regions;
    private readonly Lazy<NamedAreas> _areas;
    private readonly string _others;

    private KnownRegions(IReadOnlyList<StoredRegion> loaded, string others)
    {
        _regions = new(() => Read(loaded));
        _areas = new(() => _regions.Value.Values.Aggregate(NamedAreas.None, (areas, region) => areas.With(NamedAreas.Of(region.Name, region.Polygons))));
        _others = others;
    }

    /// <summary>The nations and loaded regions, for what needs them beside a state of the data.</summary>
    public static KnownRegions Of(IReadOnlyList<StoredRegion> loaded) => new(loaded, "rangemap regions loads others");

    /// <summary>The regions of a state of the data. Loaded regions change without it, so a frozen edition has the nations only.</summary>
    public static KnownRegions Of(DataSnapshot data) => data.Answers.GetOrMake(
        "known regions", () => data.FrozenId is null ? Of(data.Regions) : new([], "a frozen edition knows no others, because those that were loaded may change"));

    /// <summary>All of them, in the order of the alphabet.</summary>
    public IEnumerable<NamedRegion> All => _regions.Value.Values.OrderBy(region => region.Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>The region of a name, case does not count; null where none is named.</summary>
    /// <exception cref="UserException">There is none.</exception>
    public NamedRegion? Find(string? name)
    {
        if (string.IsNullOrWhiteSpace(name))
            return null;
        return _regions.Value.TryGetValue(name.Trim(), out var region)
            ? region
            : throw new UserException($"There is no region '{name}'.", "region", $"Use one of {string.Join(", ", All.Select(known => known.Name).Take(MostNamed))}; {_others}.") { IsArgument = true };
    }

    public double? KmOutside(string area, Square square) => _areas.Value.KmOutside(area, square);

    public bool? Covers(string area, Square square) => _areas.Value.Covers(area, square);

    private static Dictionary<string, NamedRegion> Read(IReadOnlyList<StoredRegion> loaded)
    {
        using var nations = BaseData.Open("nations.geojson");
        var regions = GeoJsonPolygons.Read(nations, "nation").Where(read => read.Property is not null)
            .GroupBy(read => read.Property!, read => read.Polygon).ToDictionary(group => group.Key, group => new NamedRegion(group.Key, [.. group]), StringComparer.OrdinalIgnoreCase);
        foreach (var region in loaded)
            regions[region.Name] = new(region.Name, [.. GeoJsonPolygons.Read(new MemoryStream(Encoding.UTF8.GetBytes(region.GeoJson)), RegionStore.NameProperty).Select(read => read.Polygon)]);
        return regions;
    }
}
