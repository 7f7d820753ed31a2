namespace RangeMap.Grids;

/// <summary>
/// The lines that part the national grids at sea, drawn by hand midway between the coasts. No land
/// touches them but reefs off Normandy, so on land they are exact; at sea they are a convention of RangeMap.
/// </summary>
internal static class GridBoundaries
{
    /// <summary>Between Ireland and Great Britain from south to north: St George's Channel, Irish Sea, North Channel, then west between Malin Head and Islay.</summary>
    private static readonly LatLon[] IrishSea =
    [
        new(51.00, -5.90), new(52.00, -5.80), new(52.78, -5.50), new(53.35, -5.40), new(54.15, -5.20), new(54.50, -5.15), new(54.77, -5.32),
        new(54.95, -5.45), new(55.25, -5.93), new(55.33, -5.99), new(55.45, -6.25), new(55.55, -6.90), new(55.85, -7.50), new(56.00, -8.50),
    ];

    /// <summary>Between England and France from west to east, through the Channel and the Strait of Dover.</summary>
    private static readonly LatLon[] Channel =
    [
        new(49.77, -2.00), new(49.85, -1.00), new(50.10, 0.00), new(50.35, 0.50), new(50.62, 0.90), new(51.00, 1.48), new(51.15, 1.90), new(51.35, 2.60),
    ];

    /// <summary>Round the Channel Islands with the Minquiers and the Ecrehous, without the Roches Douvres, Chausey and the mainland of France.</summary>
    private static readonly LatLon[] ChannelIslands =
    [
        new(48.92, -2.45), new(48.92, -1.93), new(49.26, -1.88), new(49.40, -1.93), new(49.60, -2.05), new(50.00, -2.05), new(50.00, -2.95), new(49.30, -2.95),
    ];

    /// <summary>True on the Irish side of the Irish Sea line.</summary>
    public static bool IsIrishSide(LatLon place) => place.Longitude < Interpolate(IrishSea, place.Latitude, p => p.Latitude, p => p.Longitude);

    /// <summary>True on the French side of the Channel line, and in the Faroes (north of 61.2 and west of -4): land that the British letters cover but no British record comes from.</summary>
    public static bool IsForeign(LatLon place) =>
        place.Longitude >= Channel[0].Longitude && place.Latitude < Interpolate(Channel, place.Longitude, p => p.Longitude, p => p.Latitude) ||
        place is { Latitude: > 61.2, Longitude: < -4 };

    /// <summary>True round the Channel Islands.</summary>
    public static bool IsChannelIslands(LatLon place)
    {
        var inside = false;
        for (int i = 0, j = ChannelIslands.Length - 1; i < ChannelIslands.Length; j = i++)
        {
            LatLon a = ChannelIslands[i], b = ChannelIslands[j];
            if (a.Latitude > place.Latitude != b.Latitude > place.Latitude &&
                place.Longitude < a.Longitude + (place.Latitude - a.Latitude) / (b.Latitude - a.Latitude) * (b.Longitude - a.Longitude))
                inside = !inside;
        }

        return inside;
    }

    /// <summary>The other coordinate of a line where the first, which grows along it, has the value given; beyond the ends, that of the end.</summary>
    private static double Interpolate(LatLon[] line, double at, Func<LatLon, double> first, Func<LatLon, double> other)
    {
        if (at <= first(line[0]))
            return other(line[0]);
        for (var k = 1; k < line.Length; k++)
        {
            LatLon a = line[k - 1], b = line[k];
            if (at <= first(b))
                return other(a) + (at - first(a)) / (first(b) - first(a)) * (other(b) - other(a));
        }

        return other(line[^1]);
    }
}
