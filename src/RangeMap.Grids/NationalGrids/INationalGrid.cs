namespace RangeMap.Grids;

/// <summary>One national grid: its plane, its letters, and the way between the plane and latitude/longitude.</summary>
public interface INationalGrid : IPlane
{
    /// <summary>The grid's stored number.</summary>
    GridId Id { get; }

    /// <summary>Short code for data: GB, IE, CI (ED50), CI-WGS84, ITM, EU, UTM-N, UTM-S or RD.</summary>
    string Code { get; }

    /// <summary>Name for people, such as "British National Grid".</summary>
    string Name { get; }

    /// <summary>Accuracy of the way between latitude/longitude and the plane, in metres (one standard deviation or as published).</summary>
    double AccuracyMetres { get; }

    /// <summary>True when the point lies in the grid's area, where squares have names, half-open: [west, east) by [south, north).</summary>
    bool Contains(EastNorth point);

    /// <summary>The name of the 100 km square that holds the point ("TQ", "J", "WV"; "30UXC", "ITM77", "100kmE38N32"), or null outside the grid's area.</summary>
    string? Letters(EastNorth point);

    /// <summary>Writes the name of a square in the grid's area; false when the place is too short (<see cref="GridReference.LongestText"/> always suffices).</summary>
    /// <remarks>Unless a grid says otherwise: the letters, then the figures of easting and northing, then a tetrad letter or a quadrant.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The square lies outside the grid's area.</exception>
    bool TryWriteName(Square square, Span<char> destination, out int length) => LetteredName.TryWrite(this, square, destination, out length);

    /// <summary>
    /// True where the datum shift is not defined and is continued from its rim, so that the position is only approximate
    /// (some metres). False everywhere for grids whose shift is one formula.
    /// </summary>
    bool IsApproximate(LatLon point) => false;
}
