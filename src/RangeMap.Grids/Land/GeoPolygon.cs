namespace RangeMap.Grids;

/// <summary>A polygon on the earth: an outer ring and holes, each closed (the first point repeated at the end). Edges are straight in longitude and latitude.</summary>
public sealed class GeoPolygon
{
    private const int LeastPoints = 4;

    /// <summary>An edge bends on a plane by the square of its length: by less than 1 m when no piece is longer than this, by 350 m for one degree.</summary>
    private const double LongestPieceDegrees = 0.05;

    /// <summary>Makes a polygon of its rings, the outer one first.</summary>
    /// <exception cref="ArgumentException">There is no ring, or one has fewer than four points or is not closed.</exception>
    public GeoPolygon(IReadOnlyList<LatLon[]> rings)
    {
        ArgumentNullException.ThrowIfNull(rings);
        if (rings.Count == 0)
            throw new ArgumentException("A polygon needs an outer ring.", nameof(rings));
        foreach (var ring in rings)
        {
            if (ring.Length < LeastPoints || ring[0] != ring[^1])
                throw new ArgumentException("A ring needs at least four points, the last equal to the first.", nameof(rings));
        }

        Rings = rings;
    }

    /// <summary>The outer ring, then the holes.</summary>
    public IReadOnlyList<LatLon[]> Rings { get; }

    /// <summary>The rings on a plane, metres, with long edges cut so that they bend as they do on the earth.</summary>
    internal EastNorth[][] On(IPlane plane) => [.. Rings.Select(ring => OnPlane(ring, plane))];

    private static EastNorth[] OnPlane(LatLon[] ring, IPlane plane)
    {
        var points = new List<EastNorth>(ring.Length) { plane.FromLatLon(ring[0]) };
        for (var k = 1; k < ring.Length; k++)
        {
            LatLon from = ring[k - 1], to = ring[k];
            double north = to.Latitude - from.Latitude, east = to.Longitude - from.Longitude;
            var pieces = (int)Math.Ceiling(Math.Max(Math.Abs(north), Math.Abs(east)) / LongestPieceDegrees);
            for (var piece = 1; piece < pieces; piece++)
                points.Add(plane.FromLatLon(new(from.Latitude + north * piece / pieces, from.Longitude + east * piece / pieces)));
            points.Add(k == ring.Length - 1 ? points[0] : plane.FromLatLon(to));
        }

        return [.. points];
    }
}
