namespace RangeMap.Grids;

/// <summary>One national grid: its plane, its letters, and the way between the plane and latitude/longitude.</summary>
public interface INationalGrid
{
    /// <summary>The grid's stored number.</summary>
    GridId Id { get; }

    /// <summary>Short code for data: GB, IE, CI (ED50) or CI-WGS84.</summary>
    string Code { get; }

    /// <summary>Name for people, such as "British National Grid".</summary>
    string Name { get; }

    /// <summary>EPSG code of the plane.</summary>
    int Epsg { get; }

    /// <summary>Accuracy of the way between latitude/longitude and the plane, in metres (one standard deviation or as published).</summary>
    double AccuracyMetres { get; }

    /// <summary>True when the point lies in the lettered area, half-open: [west, east) by [south, north).</summary>
    bool Contains(EastNorth point);

    /// <summary>Latitude/longitude to the plane, in metres. Defined also somewhat outside the lettered area, with less accuracy there.</summary>
    EastNorth FromLatLon(LatLon point);

    /// <summary>The plane to latitude/longitude, in degrees; the inverse of <see cref="FromLatLon"/>.</summary>
    LatLon ToLatLon(EastNorth point);

    /// <summary>The letters of the 100 km square that holds the point ("TQ", "J", "WV"), or null outside the lettered area.</summary>
    string? Letters(EastNorth point);
}
