namespace RangeMap.Grids;

/// <summary>Regions by name, each one polygon or many: nations, islands, and those that a user loads. Case does not count.</summary>
public sealed class NamedAreas
{
    /// <summary>A square lies in a region although its corners stand out into the sea by up to half its side, and never by more than this.</summary>
    private const double MostOverhangKm = 5;

    private readonly Dictionary<string, PolygonIndex> _areas;

    private NamedAreas(Dictionary<string, PolygonIndex> areas) => _areas = areas;

    /// <summary>No regions.</summary>
    public static NamedAreas None { get; } = new([]);

    /// <summary>The names, in the order of the alphabet.</summary>
    public IReadOnlyList<string> Names => [.. _areas.Keys.Order(StringComparer.OrdinalIgnoreCase)];

    /// <summary>One region.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="polygons">Its polygons, at least one.</param>
    public static NamedAreas Of(string name, IEnumerable<GeoPolygon> polygons) => new(new(StringComparer.OrdinalIgnoreCase) { [name] = new PolygonIndex(polygons) });

    /// <summary>Reads polygons in longitude and latitude; features that lack the property are passed over.</summary>
    /// <param name="geoJson">A feature collection.</param>
    /// <param name="property">The property that holds the name.</param>
    /// <exception cref="FormatException">The stream holds no GeoJSON, or no feature collection of closed polygons.</exception>
    public static NamedAreas Read(Stream geoJson, string property)
    {
        var named = GeoJsonPolygons.Read(geoJson, property).Where(read => !string.IsNullOrWhiteSpace(read.Property));
        var areas = new Dictionary<string, PolygonIndex>(StringComparer.OrdinalIgnoreCase);
        foreach (var group in named.GroupBy(read => read.Property!.Trim(), read => read.Polygon, StringComparer.OrdinalIgnoreCase))
            areas.Add(group.Key, new PolygonIndex(group));
        return new(areas);
    }

    /// <summary>These regions and others; where both have a name, the others' counts.</summary>
    public NamedAreas With(NamedAreas others)
    {
        var all = new Dictionary<string, PolygonIndex>(_areas, StringComparer.OrdinalIgnoreCase);
        foreach (var (name, area) in others._areas)
            all[name] = area;
        return new(all);
    }

    /// <summary>
    /// Kilometres between a square and the region, 0 where they touch; null where the name is not known. Measured from the
    /// corners and the centre, so that a region which reaches into a square between them counts as up to half a side away.
    /// </summary>
    public double? KmOutside(string name, Square square)
    {
        if (!_areas.TryGetValue(name, out var area))
            return null;
        var fromMiddle = KmOutside(area, NationalGrid.Get(square.Grid).ToLatLon(square.Centre));
        // The region reaches into the largest circle within the square.
        return fromMiddle <= square.SideMetres / 2000.0 ? 0 : Math.Min(fromMiddle, Points(square).Min(place => KmOutside(area, place)));
    }

    /// <summary>
    /// True when the square lies in the region: its centre and corners do, or stand out from it by no more than half its side
    /// (5 km at most), as squares on a coast do; null where the name is not known.
    /// </summary>
    public bool? Covers(string name, Square square)
    {
        if (!_areas.TryGetValue(name, out var area))
            return null;
        var overhang = Math.Min(MostOverhangKm, square.SideMetres / 2000.0);
        return Points(square).All(place => KmOutside(area, place) <= overhang);
    }

    /// <summary>The region that holds a place or, for places in none such as islets, the very shore and lakes on a border, the nearest. Null far from the islands, and where there is no region.</summary>
    public string? HoldingOrNearest(LatLon place)
    {
        if (!PolygonIndex.Covers(place) || _areas.Count == 0)
            return null;
        foreach (var (name, area) in _areas)
        {
            if (area.Contains(place))
                return name;
        }

        return _areas.MinBy(area => area.Value.NearestEdge(place).Km).Key;
    }

    private static double KmOutside(PolygonIndex area, LatLon place) =>
        !PolygonIndex.Covers(place) ? double.PositiveInfinity : area.Contains(place) ? 0 : area.NearestEdge(place).Km;

    private static IEnumerable<LatLon> Points(Square square)
    {
        var grid = NationalGrid.Get(square.Grid);
        double west = square.Easting, south = square.Northing, side = square.SideMetres;
        yield return grid.ToLatLon(square.Centre);
        yield return grid.ToLatLon(new(west, south));
        yield return grid.ToLatLon(new(west + side, south));
        yield return grid.ToLatLon(new(west + side, south + side));
        yield return grid.ToLatLon(new(west, south + side));
    }
}
