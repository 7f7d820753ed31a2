namespace RangeMap.Grids;

/// <summary>
/// Transverse Mercator by Redfearn's power series as Ordnance Survey prints them ("A guide to coordinate systems in Great
/// Britain", annexes B and C). The published OSTN15 test points were made with these series, so they are kept for the
/// British grid: the exact projection differs from them by up to 1 mm within Great Britain.
/// </summary>
/// <remarks>The terms left off grow fast with the distance from the central meridian: 8 mm at 7 degrees, 5 cm at 9, 0.4 m at 12, 13 m at 20.</remarks>
internal sealed class RedfearnTransverseMercator
{
    private readonly double scaledMajor, e2, latitudeOfOrigin, longitudeOfOrigin, falseEasting, falseNorthing;
    private readonly double arc0, arc2, arc4, arc6, arcAtOrigin;
    private readonly double foot2, foot4, foot6;

    /// <summary>Prepares the constants of the series.</summary>
    /// <param name="ellipsoid">The ellipsoid.</param>
    /// <param name="latitudeOfOrigin">Degrees.</param>
    /// <param name="centralMeridian">Degrees.</param>
    /// <param name="scale">F0, on the central meridian.</param>
    /// <param name="falseEasting">E0, metres.</param>
    /// <param name="falseNorthing">N0, metres.</param>
    public RedfearnTransverseMercator(Ellipsoid ellipsoid, double latitudeOfOrigin, double centralMeridian, double scale, double falseEasting, double falseNorthing)
    {
        double n = ellipsoid.ThirdFlattening, n2 = n * n, n3 = n2 * n, bF0 = ellipsoid.SemiMinorAxis * scale;
        scaledMajor = ellipsoid.SemiMajorAxis * scale;
        e2 = ellipsoid.EccentricitySquared;
        this.latitudeOfOrigin = latitudeOfOrigin * Angle.RadiansPerDegree;
        longitudeOfOrigin = centralMeridian * Angle.RadiansPerDegree;
        (this.falseEasting, this.falseNorthing) = (falseEasting, falseNorthing);
        // The guide's sin k(phi - phi0) cos k(phi + phi0) is half of (sin 2k phi - sin 2k phi0), which needs no new sine for each phi.
        arc0 = bF0 * (1 + n + 5 / 4.0 * n2 + 5 / 4.0 * n3);
        arc2 = bF0 * (3 * n + 3 * n2 + 21 / 8.0 * n3) / 2;
        arc4 = bF0 * (15 / 8.0 * n2 + 15 / 8.0 * n3) / 2;
        arc6 = bF0 * (35 / 24.0 * n3) / 2;
        var (s0, c0) = Math.SinCos(this.latitudeOfOrigin);
        arcAtOrigin = Arc(this.latitudeOfOrigin, s0, c0);
        foot2 = 3 / 2.0 * n - 27 / 32.0 * n3;
        foot4 = 21 / 16.0 * n2;
        foot6 = 151 / 96.0 * n3;
    }

    /// <summary>Geodetic degrees to the plane.</summary>
    public EastNorth Forward(LatLon point)
    {
        var phi = point.Latitude * Angle.RadiansPerDegree;
        var (s, c) = Math.SinCos(phi);
        double s2 = s * s, c2 = c * c, s2c2 = s2 * c2, c4 = c2 * c2, s4 = s2 * s2;
        var w = 1 - e2 * s2;
        double nu = scaledMajor / Math.Sqrt(w), psi = w / (1 - e2), eta2 = psi - 1; // psi = nu/rho
        double d = point.Longitude * Angle.RadiansPerDegree - longitudeOfOrigin, d2 = d * d;
        // Terms I to VI of the guide, with t^2 = s^2/c^2 multiplied out so that nothing is divided by a cosine.
        var north = 1 + d2 / 12 * (5 * c2 - s2 + 9 * eta2 * c2) + d2 * d2 / 360 * (61 * c4 - 58 * s2c2 + s4);
        var east = 1 + d2 / 6 * (psi * c2 - s2) + d2 * d2 / 120 * (5 * c4 - 18 * s2c2 + s4 + eta2 * (14 * c4 - 58 * s2c2));
        return new(
            falseEasting + nu * c * d * east,
            falseNorthing + Arc(phi, s, c) - arcAtOrigin + nu * s * c * d2 / 2 * north);
    }

    /// <summary>The plane to geodetic degrees.</summary>
    public LatLon Inverse(EastNorth point)
    {
        var (phi, s, c) = Footpoint(point.Northing - falseNorthing + arcAtOrigin);
        var w = 1 - e2 * s * s;
        double nu = scaledMajor / Math.Sqrt(w), psi = w / (1 - e2), eta2 = psi - 1;
        double t = s / c, t2 = t * t, t4 = t2 * t2;
        double q = (point.Easting - falseEasting) / nu, q2 = q * q, q4 = q2 * q2;
        // Terms VII to XII A of the guide, with x/nu = q.
        var latitude = phi - t * psi * q2 / 2 * (1 - q2 / 12 * (5 + 3 * t2 + eta2 - 9 * t2 * eta2) + q4 / 360 * (61 + 90 * t2 + 45 * t4));
        var longitude = longitudeOfOrigin + q / c * (1 - q2 / 6 * (psi + 2 * t2) + q4 / 120 * (5 + 28 * t2 + 24 * t4)
            - q4 * q2 / 5040 * (61 + 662 * t2 + 1320 * t4 + 720 * t4 * t2));
        return new(latitude * Angle.DegreesPerRadian, longitude * Angle.DegreesPerRadian);
    }

    /// <summary>The meridian arc from the equator to phi, scaled; the guide's M is a difference of two.</summary>
    private double Arc(double phi, double sin, double cos)
    {
        double sin2 = 2 * sin * cos, cos2 = cos * cos - sin * sin;
        double sin4 = 2 * sin2 * cos2, sin6 = sin2 * (4 * cos2 * cos2 - 1);
        return arc0 * phi - arc2 * sin2 + arc4 * sin4 - arc6 * sin6;
    }

    /// <summary>The latitude whose meridian arc is given, with its sine and cosine.</summary>
    /// <remarks>A series in the rectifying latitude (error about 0.1 mm) and one Newton step; no loop as in the guide is needed.</remarks>
    private (double Phi, double Sin, double Cos) Footpoint(double arc)
    {
        var mu = arc / arc0;
        var (sin, cos) = Math.SinCos(2 * mu);
        var phi = mu + sin * (foot2 + 2 * foot4 * cos + foot6 * (4 * cos * cos - 1));
        var (s, c) = Math.SinCos(phi);
        var w = 1 - e2 * s * s;
        var rho = scaledMajor * (1 - e2) / (w * Math.Sqrt(w));
        var step = (arc - Arc(phi, s, c)) / rho; // about 1e-11, so the sine and cosine follow it linearly
        return (phi + step, s + c * step, c - s * step);
    }
}
