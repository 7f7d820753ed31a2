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
        _arcAtOrigin = Arc(new OneLane(_latitudeOfOrigin), new OneLane(s0), new OneLane(c0)).Value;
        _foot2 = 3 / 2.0 * n - 27 / 32.0 * n3;
        _foot4 = 21 / 16.0 * n2;
        _foot6 = 151 / 96.0 * n3;
    }

    /// <summary>Geodetic degrees to the plane.</summary>
    public EastNorth Forward(LatLon point)
    {
        var (easting, northing) = Forward(new OneLane(point.Latitude), new OneLane(point.Longitude));
        return new(easting.Value, northing.Value);
    }

    /// <summary>The plane to geodetic degrees.</summary>
    public LatLon Inverse(EastNorth point)
    {
        var (latitude, longitude) = Inverse(new OneLane(point.Easting), new OneLane(point.Northing));
        return new(latitude.Value, longitude.Value);
    }

    /// <summary>Geodetic degrees to the plane, one place or several.</summary>
    public (T Easting, T Northing) Forward<T>(T latitude, T longitude)
        where T : struct, ILanes<T>
    {
        var phi = Angle.RadiansPerDegree * latitude;
        var (s, c) = T.SinCos(phi);
        T s2 = s * s, c2 = c * c, s2c2 = s2 * c2, c4 = c2 * c2, s4 = s2 * s2;
        var w = 1 - _e2 * s2;
        T nu = _scaledMajor / T.Sqrt(w), psi = 1 / (1 - _e2) * w, eta2 = -1 + psi; // psi = nu/rho
        T d = -_longitudeOfOrigin + Angle.RadiansPerDegree * longitude, d2 = d * d;
        // Terms I to VI of the guide, with t^2 = s^2/c^2 multiplied out so that nothing is divided by a cosine.
        var north = 1 + 1 / 12.0 * d2 * (5 * c2 - s2 + 9 * eta2 * c2) + 1 / 360.0 * (d2 * d2) * (61 * c4 - 58 * s2c2 + s4);
        var east = 1 + 1 / 6.0 * d2 * (psi * c2 - s2) + 1 / 120.0 * (d2 * d2) * (5 * c4 - 18 * s2c2 + s4 + eta2 * (14 * c4 - 58 * s2c2));
        return (
            _falseEasting + nu * c * d * east,
            _falseNorthing - _arcAtOrigin + (Arc(phi, s, c) + 0.5 * (nu * s * c * d2) * north));
    }

    /// <summary>The plane to geodetic degrees, one place or several.</summary>
    public (T Latitude, T Longitude) Inverse<T>(T easting, T northing)
        where T : struct, ILanes<T>
    {
        var (phi, s, c) = Footpoint(_arcAtOrigin - _falseNorthing + northing);
        var w = 1 - _e2 * (s * s);
        T nu = _scaledMajor / T.Sqrt(w), psi = 1 / (1 - _e2) * w, eta2 = -1 + psi;
        T t = s / c, t2 = t * t, t4 = t2 * t2;
        T q = (-_falseEasting + easting) / nu, q2 = q * q, q4 = q2 * q2;
        // Terms VII to XII A of the guide, with x/nu = q.
        var latitude = phi - 0.5 * (t * psi * q2) * (1 - 1 / 12.0 * q2 * (5 + 3 * t2 + eta2 - 9 * (t2 * eta2)) + 1 / 360.0 * q4 * (61 + 90 * t2 + 45 * t4));
        var longitude = _longitudeOfOrigin + q / c * (1 - 1 / 6.0 * q2 * (psi + 2 * t2) + 1 / 120.0 * q4 * (5 + 28 * t2 + 24 * t4)
            - 1 / 5040.0 * (q4 * q2) * (61 + 662 * t2 + 1320 * t4 + 720 * (t4 * t2)));
        return (Angle.DegreesPerRadian * latitude, Angle.DegreesPerRadian * longitude);
    }

    /// <summary>The meridian arc from the equator to phi, scaled; the guide's M is a difference of two.</summary>
    private T Arc<T>(T phi, T sin, T cos)
        where T : struct, ILanes<T>
    {
        T sin2 = 2 * sin * cos, cos2 = cos * cos - sin * sin;
        T sin4 = 2 * sin2 * cos2, sin6 = sin2 * (-1 + 4 * (cos2 * cos2));
        return _arc0 * phi - _arc2 * sin2 + _arc4 * sin4 - _arc6 * sin6;
    }

    /// <summary>The latitude whose meridian arc is given, with its sine and cosine.</summary>
    /// <remarks>A series in the rectifying latitude (error about 0.1 mm) and one Newton step; no loop as in the guide is needed.</remarks>
    private (T Phi, T Sin, T Cos) Footpoint<T>(T arc)
        where T : struct, ILanes<T>
    {
        var mu = 1 / _arc0 * arc;
        var (sin, cos) = T.SinCos(2 * mu);
        var phi = mu + sin * (_foot2 - _foot6 + 2 * _foot4 * cos + 4 * _foot6 * (cos * cos));
        var (s, c) = T.SinCos(phi);
        var w = 1 - _e2 * (s * s);
        var step = 1 / (_scaledMajor * (1 - _e2)) * (arc - Arc(phi, s, c)) * (w * T.Sqrt(w)); // divided by rho; about 1e-11, so the sine and cosine follow it linearly
        return (phi + step, s + c * step, c - s * step);
    }
}
