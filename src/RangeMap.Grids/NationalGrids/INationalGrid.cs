namespace RangeMap.Grids;

/// <summary>One national grid: its plane, its letters, and the way between the plane and latitude/longitude.</summary>
public interface INationalGrid : IPlane
{
    /// <summary>The grid's stored number.</summary>
    GridId Id { get; }

    /// <summary>Short code for data: GB, IE, CI (ED50) or CI-WGS84.</summary>
    string Code { get; }

    /// <summary>Name for people, such as "British National Grid".</summary>
    string Name { get; }

    /// <summary>Accuracy of the way between latitude/longitude and the plane, in metres (one standard deviation or as published).</summary>
    double AccuracyMetres { get; }

    /// <summary>True when the point lies in the lettered area, half-open: [west, east) by [south, north).</summary>
    bool Contains(EastNorth point);

    /// <summary>The letters of the 100 km square that holds the point ("TQ", "J", "WV"), or null outside the lettered area.</summary>
    string? Letters(EastNorth point);

    /// <summary>
    /// True where the datum shift is not defined and is continued from its rim, so that the position is only approximate
    /// (some metres). False everywhere for grids whose shift is one formula.
    /// </summary>
    bool IsApproximate(LatLon point) => false;
}
