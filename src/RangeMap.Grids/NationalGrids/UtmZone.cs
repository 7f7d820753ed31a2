namespace RangeMap.Grids;

/// <summary>The sixty zones of UTM, with the exceptions for Norway and Svalbard (NGA.STND.0037, "Universal grids and grid reference systems").</summary>
internal static class UtmZone
{
    /// <summary>The number of zones; they count from 180 west eastwards, 1 to 60.</summary>
    public const int Count = 60;

    /// <summary>The zone in which a place is recorded.</summary>
    /// <param name="place">Any longitude; the latitude matters for the exceptions only.</param>
    public static int Of(LatLon place)
    {
        var longitude = place.Longitude - 360 * Math.Floor((place.Longitude + 180) / 360);
        var zone = Math.Clamp((int)((longitude + 180) / 6) + 1, 1, Count);
        return place.Latitude switch
        {
            >= 56 and < 64 when longitude is >= 3 and < 6 => 32, // south-western Norway
            >= 72 when longitude is >= 0 and < 42 => longitude switch { < 9 => 31, < 21 => 33, < 33 => 35, _ => 37 }, // Svalbard
            _ => zone,
        };
    }

    /// <summary>The central meridian of a zone, degrees.</summary>
    public static double CentralMeridian(int zone) => 6 * zone - 183;
}
