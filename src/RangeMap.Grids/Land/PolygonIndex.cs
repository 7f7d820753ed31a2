using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace RangeMap.Grids;

/// <summary>Polygons laid on the British plane with an index, to ask quickly whether a place is in them and how far off they are.</summary>
/// <remarks>
/// The plane serves as a common map only: over the islands it stretches distances by up to 0.5 %, so a coast is taken for
/// the nearest where it is so within that; the distance itself is then measured on the sphere.
/// </remarks>
internal sealed class PolygonIndex
{
    private const double West = -25, East = 15, South = 42, North = 68;

    private readonly INationalGrid _plane = NationalGrid.Get(GridId.British);
    private readonly IndexedPointInAreaLocator _locator;
    private readonly Lazy<IndexedFacetDistance> _distance;

    public PolygonIndex(IEnumerable<GeoPolygon> polygons)
    {
        var factory = GeometryFactory.Default;
        var shapes = polygons.Select(polygon => Array.ConvertAll(polygon.On(_plane), ring => factory.CreateLinearRing(Array.ConvertAll(ring, ToCoordinate))))
            .Select(rings => factory.CreatePolygon(rings[0], rings[1..]));
        var all = factory.CreateMultiPolygon([.. shapes]);
        _locator = new(all);
        _distance = new(() => new(all));
    }

    /// <summary>True where the common plane is fit for use: within some 1,000 km of the islands.</summary>
    public static bool Covers(LatLon place) => place is { Longitude: > West and < East, Latitude: > South and < North };

    /// <summary>True when the place lies in a polygon or on its edge.</summary>
    public bool Contains(LatLon place) => _locator.Locate(ToCoordinate(_plane.FromLatLon(place))) != Location.Exterior;

    /// <summary>The point of an edge that is nearest to the place, and its distance.</summary>
    public NearestLand NearestEdge(LatLon place)
    {
        var point = GeometryFactory.Default.CreatePoint(ToCoordinate(_plane.FromLatLon(place)));
        var found = _distance.Value.NearestPoints(point)[0];
        var nearest = _plane.ToLatLon(new(found.X, found.Y));
        return new(nearest, GreatCircle.Km(place, nearest));
    }

    private static Coordinate ToCoordinate(EastNorth point) => new(point.Easting, point.Northing);
}
