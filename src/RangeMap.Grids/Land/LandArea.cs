using System.Collections.Concurrent;

namespace RangeMap.Grids;

/// <summary>Land as polygons: whether a place lies on it, what is the nearest land, and how much of a square is land.</summary>
/// <remarks>
/// As good as the polygons it is made of: about 50 m with the coast in gis-data. Made for the islands and the seas round them, where places of
/// every grid are laid on the British plane to compare them. Safe for use by several threads at once.
/// </remarks>
public sealed class LandArea
{
    /// <summary>The value of the property "part" that marks the land of other countries in the files of gis-data.</summary>
    private const string ForeignPart = "near";

    private readonly IReadOnlyList<GeoPolygon> _polygons;
    private readonly PolygonIndex _index;
    private readonly ConcurrentDictionary<GridId, LandTiles> _tiles = new();

    /// <summary>Land made of polygons that do not overlap. Lakes are land where they are polygons too, and fill the holes of the land round them.</summary>
    /// <exception cref="ArgumentException">There is no polygon.</exception>
    public LandArea(IReadOnlyList<GeoPolygon> polygons)
    {
        ArgumentNullException.ThrowIfNull(polygons);
        if (polygons.Count == 0)
            throw new ArgumentException("Land needs at least one polygon.", nameof(polygons));
        _polygons = polygons;
        _index = new(polygons);
    }

    /// <summary>Reads the polygons of GeoJSON feature collections in longitude and latitude; the land of other countries (property "part" of "near") is left out.</summary>
    /// <param name="geoJson">Such as land.geojson alone, or with islets.geojson and lakes.geojson so that all is land but the sea.</param>
    /// <exception cref="FormatException">A stream holds no GeoJSON, or no feature collection of closed polygons.</exception>
    public static LandArea Read(params IReadOnlyList<Stream> geoJson)
    {
        ArgumentNullException.ThrowIfNull(geoJson);
        return new([.. geoJson.SelectMany(stream => GeoJsonPolygons.Read(stream, "part")).Where(read => read.Property != ForeignPart).Select(read => read.Polygon)]);
    }

    /// <summary>True when the place lies on land or on its edge; false far from the islands.</summary>
    public bool Contains(LatLon place) => PolygonIndex.Covers(place) && _index.Contains(place);

    /// <summary>The nearest land and how far it is; the place itself and 0 km on land. Null further from the islands than some 1,000 km, where the common plane ends.</summary>
    public NearestLand? Nearest(LatLon place) =>
        !PolygonIndex.Covers(place) ? null : _index.Contains(place) ? new(place, 0) : _index.NearestEdge(place);

    /// <summary>The part of the square that is land, 0 to 1, by area on the square's own plane.</summary>
    /// <remarks>The first square of a grid costs some 100 ms, the others some tens of microseconds.</remarks>
    public double LandShare(Square square) =>
        _tiles.GetOrAdd(square.Grid, id => new(_polygons, NationalGrid.Get(id))).Share(square);
}

/// <summary>The land nearest to a place.</summary>
/// <param name="Place">The point of its shore; the place itself where that is on land.</param>
/// <param name="Km">Distance in kilometres, within 0.5 %; 0 on land.</param>
public readonly record struct NearestLand(LatLon Place, double Km);
