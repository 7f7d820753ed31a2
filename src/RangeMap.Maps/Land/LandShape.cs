using System.Text.Json;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>The coast of Britain, Ireland, Man and the Channel Islands as polygons, to ask whether a place is on land. Good to about 50 m.</summary>
public sealed class LandShape
{
    private readonly IndexedPointInAreaLocator _locator;

    private LandShape(Geometry land) => _locator = new(land);

    /// <summary>Reads the polygons of gis-data/land/land.geojson.</summary>
    /// <param name="geoJson">A feature collection of polygons and multipolygons in longitude and latitude.</param>
    public static LandShape Read(Stream geoJson)
    {
        using var document = JsonDocument.Parse(geoJson);
        var polygons = new List<Polygon>();
        foreach (var feature in document.RootElement.GetProperty("features").EnumerateArray())
        {
            var geometry = feature.GetProperty("geometry");
            var coordinates = geometry.GetProperty("coordinates");
            if (geometry.GetProperty("type").ValueEquals("Polygon"))
                polygons.Add(ReadPolygon(coordinates));
            else
                polygons.AddRange(coordinates.EnumerateArray().Select(ReadPolygon));
        }

        return new(GeometryFactory.Default.CreateMultiPolygon([.. polygons]));
    }

    /// <summary>True when the place lies on land; lakes are land.</summary>
    public bool Contains(LatLon place) => _locator.Locate(new Coordinate(place.Longitude, place.Latitude)) != Location.Exterior;

    private static Polygon ReadPolygon(JsonElement rings)
    {
        var read = rings.EnumerateArray().Select(ReadRing).ToArray();
        return GeometryFactory.Default.CreatePolygon(read[0], read[1..]);
    }

    private static LinearRing ReadRing(JsonElement ring) =>
        GeometryFactory.Default.CreateLinearRing([.. ring.EnumerateArray().Select(point => new Coordinate(point[0].GetDouble(), point[1].GetDouble()))]);
}
