namespace RangeMap.Grids;

/// <summary>
/// Transverse Mercator by Krueger's series in the third flattening to the fourth order (L. Krueger, "Konforme Abbildung des
/// Erdellipsoids in der Ebene", 1912; in the form of C. F. F. Karney, "Transverse Mercator with an accuracy of a few
/// nanometers", J. Geodesy 85, 2011). Good to better than 0.001 mm within 30 degrees of the central meridian.
/// </summary>
internal sealed class KruegerTransverseMercator : IProjection
{
    private readonly double _radius, _longitudeOfOrigin, _falseEasting, _falseNorthing, _northingAtOrigin;
    private readonly ConformalLatitude _conformal;
    private readonly double[] _alpha, _beta;

    /// <summary>Prepares the coefficients.</summary>
    /// <param name="ellipsoid">The ellipsoid.</param>
    /// <param name="latitudeOfOrigin">Degrees.</param>
    /// <param name="centralMeridian">Degrees.</param>
    /// <param name="scale">k0, on the central meridian.</param>
    /// <param name="falseEasting">Metres.</param>
    /// <param name="falseNorthing">Metres.</param>
    public KruegerTransverseMercator(Ellipsoid ellipsoid, double latitudeOfOrigin, double centralMeridian, double scale, double falseEasting, double falseNorthing)
    {
        double n = ellipsoid.ThirdFlattening, n2 = n * n, n3 = n2 * n, n4 = n2 * n2;
        _conformal = new(ellipsoid);
        _radius = scale * ellipsoid.SemiMajorAxis / (1 + n) * (1 + n2 / 4 + n4 / 64);
        _longitudeOfOrigin = centralMeridian * Angle.RadiansPerDegree;
        (_falseEasting, _falseNorthing) = (falseEasting, falseNorthing);
        _alpha =
        [
            n / 2 - 2 * n2 / 3 + 5 * n3 / 16 + 41 * n4 / 180,
            13 * n2 / 48 - 3 * n3 / 5 + 557 * n4 / 1440,
            61 * n3 / 240 - 103 * n4 / 140,
            49561 * n4 / 161280,
        ];
        _beta =
        [
            n / 2 - 2 * n2 / 3 + 37 * n3 / 96 - n4 / 360,
            n2 / 48 + n3 / 15 - 437 * n4 / 1440,
            17 * n3 / 480 - 37 * n4 / 840,
            4397 * n4 / 161280,
        ];
        _northingAtOrigin = 0;
        _northingAtOrigin = Forward(latitudeOfOrigin * Angle.RadiansPerDegree, _longitudeOfOrigin).Northing - falseNorthing;
    }

    /// <inheritdoc/>
    public EastNorth Forward(double latitude, double longitude)
    {
        var tau = _conformal.FromGeodetic(Math.Tan(latitude));
        var (sinLon, cosLon) = Math.SinCos(longitude - _longitudeOfOrigin);
        // xi' = atan2(tau', cos lon), eta' = asinh(sin lon / h): their sines and cosines follow without further calls.
        var h = Math.Sqrt(tau * tau + cosLon * cosLon);
        double sin = tau / h, cos = cosLon / h, sinh = sinLon / h, cosh = Math.Sqrt(1 + sinh * sinh);
        var (dXi, dEta) = Sum(_alpha, sin, cos, sinh, cosh);
        return new(
            _falseEasting + _radius * (Math.Asinh(sinh) + dEta),
            _falseNorthing - _northingAtOrigin + _radius * (Math.Atan2(tau, cosLon) + dXi));
    }

    /// <inheritdoc/>
    public (double Latitude, double Longitude) Inverse(EastNorth point)
    {
        var xi = (point.Northing - _falseNorthing + _northingAtOrigin) / _radius;
        var eta = (point.Easting - _falseEasting) / _radius;
        var (sin, cos) = Math.SinCos(xi);
        var (dXi, dEta) = Sum(_beta, sin, cos, Math.Sinh(eta), Math.Cosh(eta));
        (sin, cos) = Math.SinCos(xi - dXi);
        var sinh = Math.Sinh(eta - dEta);
        var tau = _conformal.ToGeodetic(sin / Math.Sqrt(sinh * sinh + cos * cos));
        return (Math.Atan(tau), _longitudeOfOrigin + Math.Atan2(sinh, cos));
    }

    /// <summary>sum a_j sin 2j xi cosh 2j eta, and sum a_j cos 2j xi sinh 2j eta, by the recurrence of multiple angles.</summary>
    private static (double Xi, double Eta) Sum(double[] a, double sin, double cos, double sinh, double cosh)
    {
        double sin2 = 2 * sin * cos, cos2 = cos * cos - sin * sin, sinh2 = 2 * sinh * cosh, cosh2 = cosh * cosh + sinh * sinh;
        double s = sin2, c = cos2, sh = sinh2, ch = cosh2, xi = 0, eta = 0;
        foreach (var coefficient in a)
        {
            xi += coefficient * s * ch;
            eta += coefficient * c * sh;
            (s, c) = (s * cos2 + c * sin2, c * cos2 - s * sin2);
            (sh, ch) = (sh * cosh2 + ch * sinh2, ch * cosh2 + sh * sinh2);
        }

        return (xi, eta);
    }
}
