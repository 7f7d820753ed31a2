namespace RangeMap.Grids;

/// <summary>The uncertainty to assume for a latitude and longitude that states none, from the fineness with which it was written.</summary>
/// <remarks>
/// A number rounded to a unit may be off by half a unit each way, so the true place lies in a small box, and the radius is
/// half the box's diagonal: at 54 degrees north 646 m for two decimals, 65 m for three, 6.5 m for four. (0.01 degree of latitude is 1.1 km,
/// of longitude 0.65 km there.) Spreadsheets drop zeros at the end, so the finer of the two numbers should be counted.
/// </remarks>
public static class CoordinatePrecision
{
    /// <summary>Metres in a degree of latitude; 110.6 to 111.7 km on the ellipsoid, here the mean for 50 to 60 degrees north.</summary>
    private const double MetresPerDegree = 111_300;

    /// <summary>The assumed radius in metres, from the count of decimals of the degrees.</summary>
    /// <param name="decimals">0 to 15.</param>
    /// <param name="latitude">Degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count lies outside 0 to 15.</exception>
    public static double RadiusMetres(int decimals, double latitude)
    {
        if (decimals is < 0 or > 15)
            throw new ArgumentOutOfRangeException(nameof(decimals), decimals, "Decimals must be 0 to 15.");
        return RadiusMetresOfUnit(Math.Pow(10, -decimals), latitude);
    }

    /// <summary>The assumed radius in metres, from the unit of the last figure: 1/60 degree for whole minutes, 1/3600 for whole seconds.</summary>
    /// <param name="unitDegrees">Degrees, 0 or more.</param>
    /// <param name="latitude">Degrees.</param>
    public static double RadiusMetresOfUnit(double unitDegrees, double latitude)
    {
        var north = unitDegrees / 2 * MetresPerDegree;
        var east = north * Math.Cos(latitude * Angle.RadiansPerDegree);
        return Math.Sqrt(north * north + east * east);
    }
}
