namespace RangeMap.Grids;

/// <summary>
/// Transverse Mercator by Redfearn's power series as Ordnance Survey prints them ("A guide to coordinate systems in Great
/// Britain", annexes B and C). The published OSTN15 test points were made with these series, so they are kept for the
/// British grid: the exact projection differs from them by up to 1 mm within Great Britain.
/// </summary>
/// <remarks>The terms left off grow fast with the distance from the central meridian: 8 mm at 7 degrees, 5 cm at 9, 0.4 m at 12, 13 m at 20.</remarks>
internal sealed class RedfearnTransverseMercator
{
    private readonly double _scaledMajor, _e2, _latitudeOfOrigin, _longitudeOfOrigin, _falseEasting, _falseNorthing;
    private readonly double _arc0, _arc2, _arc4, _arc6, _arcAtOrigin;
    private readonly double _foot2, _foot4, _foot6;

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
        _scaledMajor = ellipsoid.SemiMajorAxis * scale;
        _e2 = ellipsoid.EccentricitySquared;
        _latitudeOfOrigin = latitudeOfOrigin * Angle.RadiansPerDegree;
        _longitudeOfOrigin = centralMeridian * Angle.RadiansPerDegree;
        (_falseEasting, _falseNorthing) = (falseEasting, falseNorthing);
        // The guide's sin k(phi - phi0) cos k(phi + phi0) is half of (sin 2k phi - sin 2k phi0), which needs no new sine for each phi.
        _arc0 = bF0 * (1 + n + 5 / 4.0 * n2 + 5 / 4.0 * n3);
        _arc2 = bF0 * (3 * n + 3 * n2 + 21 / 8.0 * n3) / 2;
        _arc4 = bF0 * (15 / 8.0 * n2 + 15 / 8.0 * n3) / 2;
        _arc6 = bF0 * (35 / 24.0 * n3) / 2;
        var (s0, c0) = Math.SinCos(_latitudeOfOrigin);
        _arcAtOrigin = Arc(_latitudeOfOrigin, s0, c0);
        _foot2 = 3 / 2.0 * n - 27 / 32.0 * n3;
        _foot4 = 21 / 16.0 * n2;
        _foot6 = 151 / 96.0 * n3;
    }

    /// <summary>Geodetic degrees to the plane.</summary>
    public EastNorth Forward(LatLon point)
    {
        var phi = point.Latitude * Angle.RadiansPerDegree;
        var (s, c) = Math.SinCos(phi);
        double s2 = s * s, c2 = c * c, s2c2 = s2 * c2, c4 = c2 * c2, s4 = s2 * s2;
        var w = 1 - _e2 * s2;
        double nu = _scaledMajor / Math.Sqrt(w), psi = w / (1 - _e2), eta2 = psi - 1; // psi = nu/rho
        double d = point.Longitude * Angle.RadiansPerDegree - _longitudeOfOrigin, d2 = d * d;
        // Terms I to VI of the guide, with t^2 = s^2/c^2 multiplied out so that nothing is divided by a cosine.
        var north = 1 + d2 / 12 * (5 * c2 - s2 + 9 * eta2 * c2) + d2 * d2 / 360 * (61 * c4 - 58 * s2c2 + s4);
        var east = 1 + d2 / 6 * (psi * c2 - s2) + d2 * d2 / 120 * (5 * c4 - 18 * s2c2 + s4 + eta2 * (14 * c4 - 58 * s2c2));
        return new(
            _falseEasting + nu * c * d * east,
            _falseNorthing + Arc(phi, s, c) - _arcAtOrigin + nu * s * c * d2 / 2 * north);
    }

    /// <summary>The plane to geodetic degrees.</summary>
    public LatLon Inverse(EastNorth point)
    {
        var (phi, s, c) = Footpoint(point.Northing - _falseNorthing + _arcAtOrigin);
        var w = 1 - _e2 * s * s;
        double nu = _scaledMajor / Math.Sqrt(w), psi = w / (1 - _e2), eta2 = psi - 1;
        double t = s / c, t2 = t * t, t4 = t2 * t2;
        double q = (point.Easting - _falseEasting) / nu, q2 = q * q, q4 = q2 * q2;
        // Terms VII to XII A of the guide, with x/nu = q.
        var latitude = phi - t * psi * q2 / 2 * (1 - q2 / 12 * (5 + 3 * t2 + eta2 - 9 * t2 * eta2) + q4 / 360 * (61 + 90 * t2 + 45 * t4));
        var longitude = _longitudeOfOrigin + q / c * (1 - q2 / 6 * (psi + 2 * t2) + q4 / 120 * (5 + 28 * t2 + 24 * t4)
            - q4 * q2 / 5040 * (61 + 662 * t2 + 1320 * t4 + 720 * t4 * t2));
        return new(latitude * Angle.DegreesPerRadian, longitude * Angle.DegreesPerRadian);
    }

    /// <summary>The meridian arc from the equator to phi, scaled; the guide's M is a difference of two.</summary>
    private double Arc(double phi, double sin, double cos)
    {
        double sin2 = 2 * sin * cos, cos2 = cos * cos - sin * sin;
        double sin4 = 2 * sin2 * cos2, sin6 = sin2 * (4 * cos2 * cos2 - 1);
        return _arc0 * phi - _arc2 * sin2 + _arc4 * sin4 - _arc6 * sin6;
    }

    /// <summary>The latitude whose meridian arc is given, with its sine and cosine.</summary>
    /// <remarks>A series in the rectifying latitude (error about 0.1 mm) and one Newton step; no loop as in the guide is needed.</remarks>
    private (double Phi, double Sin, double Cos) Footpoint(double arc)
    {
        var mu = arc / _arc0;
        var (sin, cos) = Math.SinCos(2 * mu);
        var phi = mu + sin * (_foot2 + 2 * _foot4 * cos + _foot6 * (4 * cos * cos - 1));
        var (s, c) = Math.SinCos(phi);
        var w = 1 - _e2 * s * s;
        var rho = _scaledMajor * (1 - _e2) / (w * Math.Sqrt(w));
        var step = (arc - Arc(phi, s, c)) / rho; // about 1e-11, so the sine and cosine follow it linearly
        return (phi + step, s + c * step, c - s * step);
    }
}
