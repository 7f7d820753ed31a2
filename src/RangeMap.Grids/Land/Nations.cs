namespace RangeMap.Grids;

/// <summary>The nations as polygons, to say in which a place on land lies.</summary>
/// <remarks>Coasts are drawn to some 200 m, the borders within Great Britain to some 600 m: so near to a border the answer may be wrong.</remarks>
public sealed class Nations
{
    private readonly List<(string Name, PolygonIndex Area)> _nations;

    private Nations(List<(string Name, PolygonIndex Area)> nations) => _nations = nations;

    /// <summary>The names, in the order of the file.</summary>
    public IEnumerable<string> Names => _nations.Select(nation => nation.Name);

    /// <summary>Reads polygons in longitude and latitude whose property "nation" is the name.</summary>
    /// <exception cref="FormatException">The stream holds no GeoJSON, no feature collection of closed polygons, or no nation.</exception>
    public static Nations Read(Stream geoJson)
    {
        var named = GeoJsonPolygons.Read(geoJson, "nation").Where(read => read.Property is not null).GroupBy(read => read.Property!, read => read.Polygon);
        List<(string, PolygonIndex)> nations = [.. named.Select(group => (group.Key, new PolygonIndex(group)))];
        return nations.Count > 0 ? new(nations) : throw new FormatException("No polygon has a property \"nation\".");
    }

    /// <summary>The nation of a place that is known to be on land: the one that holds it or, for islets, the very shore and lakes on a border, the nearest. Null far from the islands.</summary>
    public string? OfLand(LatLon place)
    {
        if (!PolygonIndex.Covers(place))
            return null;
        var holding = _nations.Find(nation => nation.Area.Contains(place));
        return holding.Name ?? _nations.MinBy(nation => nation.Area.NearestEdge(place).Km).Name;
    }
}
