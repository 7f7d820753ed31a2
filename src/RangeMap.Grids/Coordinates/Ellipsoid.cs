namespace RangeMap.Grids;

/// <summary>An ellipsoid of revolution, and the way between geodetic and geocentric coordinates on it.</summary>
/// <remarks>Values from the EPSG dataset and, for Airy 1830 and GRS80, Ordnance Survey, "A guide to coordinate systems in Great Britain", annexe A.</remarks>
internal sealed class Ellipsoid
{
    /// <summary>Airy 1830, of OSGB36.</summary>
    public static readonly Ellipsoid Airy = new(6_377_563.396, 299.3249646);

    /// <summary>Airy Modified 1849, of TM75.</summary>
    public static readonly Ellipsoid AiryModified = new(6_377_340.189, 299.3249646);

    /// <summary>GRS80, of ETRS89.</summary>
    public static readonly Ellipsoid Grs80 = new(6_378_137.0, 298.257222101);

    /// <summary>WGS84.</summary>
    public static readonly Ellipsoid Wgs84 = new(6_378_137.0, 298.257223563);

    /// <summary>International 1924, of ED50.</summary>
    public static readonly Ellipsoid International1924 = new(6_378_388.0, 297.0);

    /// <summary>Bessel 1841, of the Dutch Amersfoort datum.</summary>
    public static readonly Ellipsoid Bessel = new(6_377_397.155, 299.1528128);

    private Ellipsoid(double semiMajorAxis, double inverseFlattening)
    {
        var f = 1 / inverseFlattening;
        SemiMajorAxis = semiMajorAxis;
        SemiMinorAxis = semiMajorAxis * (1 - f);
        EccentricitySquared = f * (2 - f);
        ThirdFlattening = f / (2 - f);
    }

    /// <summary>a, metres.</summary>
    public double SemiMajorAxis { get; }

    /// <summary>b, metres.</summary>
    public double SemiMinorAxis { get; }

    /// <summary>e^2 = (a^2 - b^2) / a^2.</summary>
    public double EccentricitySquared { get; }

    /// <summary>n = (a - b) / (a + b).</summary>
    public double ThirdFlattening { get; }

    /// <summary>Geodetic (radians, metres above the ellipsoid) to geocentric.</summary>
    public Geocentric ToGeocentric(double latitude, double longitude, double height)
    {
        var (sinLat, cosLat) = Math.SinCos(latitude);
        var (sinLon, cosLon) = Math.SinCos(longitude);
        var nu = SemiMajorAxis / Math.Sqrt(1 - EccentricitySquared * sinLat * sinLat);
        return new(
            (nu + height) * cosLat * cosLon,
            (nu + height) * cosLat * sinLon,
            (nu * (1 - EccentricitySquared) + height) * sinLat);
    }

    /// <summary>Geocentric to geodetic latitude and longitude (radians); the height is dropped.</summary>
    /// <remarks>Bowring (1976), one pass: below 0.001 mm for heights within 10 km of the ellipsoid.</remarks>
    public (double Latitude, double Longitude) ToGeodetic(Geocentric point)
    {
        double a = SemiMajorAxis, b = SemiMinorAxis, e2 = EccentricitySquared;
        var p = Math.Sqrt(point.X * point.X + point.Y * point.Y);
        // The reduced latitude beta, as tan beta = (z/p)(a/b), then as sine and cosine without a call of either.
        double upward = point.Z * a, outward = p * b;
        var length = Math.Sqrt(upward * upward + outward * outward);
        double sinBeta = upward / length, cosBeta = outward / length;
        var latitude = Math.Atan2(
            point.Z + e2 / (1 - e2) * b * sinBeta * sinBeta * sinBeta,
            p - e2 * a * cosBeta * cosBeta * cosBeta);
        return (latitude, Math.Atan2(point.Y, point.X));
    }

    /// <summary>The height (metres) above the ellipsoid of a geocentric point whose geodetic latitude (radians) is known.</summary>
    public double Height(Geocentric point, double latitude)
    {
        var (sin, cos) = Math.SinCos(latitude);
        return Math.Sqrt(point.X * point.X + point.Y * point.Y) * cos + point.Z * sin - SemiMajorAxis * Math.Sqrt(1 - EccentricitySquared * sin * sin);
    }
}
