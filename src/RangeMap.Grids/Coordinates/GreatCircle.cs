namespace RangeMap.Grids;

/// <summary>Distances on a sphere.</summary>
public static class GreatCircle
{
    /// <summary>Mean radius of the earth, (2a + b) / 3 of the GRS80 ellipsoid (Moritz 2000), rounded to the metre.</summary>
    private const double EarthRadiusKm = 6371.009;

    /// <summary>Kilometres between two places by the haversine formula; within 0.5 % of the distance on the ellipsoid.</summary>
    public static double Km(LatLon a, LatLon b)
    {
        var north = Math.Sin((b.Latitude - a.Latitude) * Angle.RadiansPerDegree / 2);
        var east = Math.Sin((b.Longitude - a.Longitude) * Angle.RadiansPerDegree / 2);
        var h = north * north + Math.Cos(a.Latitude * Angle.RadiansPerDegree) * Math.Cos(b.Latitude * Angle.RadiansPerDegree) * east * east;
        return 2 * EarthRadiusKm * Math.Asin(Math.Sqrt(Math.Min(1, h)));
    }
}
