namespace RangeMap.Grids;

/// <summary>
/// Lambert azimuthal equal-area projection of an ellipsoid, oblique case (EPSG method 9820, IOGP guidance note 7-2; J. P. Snyder,
/// "Map Projections: A Working Manual", 1987, pages 187 to 190).
/// </summary>
internal sealed class LambertAzimuthalEqualArea : IProjection
{
    private readonly double _e, _e2, _polarQ, _radius, _stretch, _sinOrigin, _cosOrigin, _longitudeOfOrigin, _falseEasting, _falseNorthing;

    /// <summary>Prepares the constants.</summary>
    /// <param name="ellipsoid">The ellipsoid.</param>
    /// <param name="latitudeOfOrigin">Degrees, not a pole.</param>
    /// <param name="longitudeOfOrigin">Degrees.</param>
    /// <param name="falseEasting">Metres.</param>
    /// <param name="falseNorthing">Metres.</param>
    public LambertAzimuthalEqualArea(Ellipsoid ellipsoid, double latitudeOfOrigin, double longitudeOfOrigin, double falseEasting, double falseNorthing)
    {
        _e2 = ellipsoid.EccentricitySquared;
        _e = Math.Sqrt(_e2);
        _polarQ = Q(1);
        _radius = ellipsoid.SemiMajorAxis * Math.Sqrt(_polarQ / 2);
        _longitudeOfOrigin = longitudeOfOrigin * Angle.RadiansPerDegree;
        (_falseEasting, _falseNorthing) = (falseEasting, falseNorthing);
        var (sin, cos) = Math.SinCos(latitudeOfOrigin * Angle.RadiansPerDegree);
        (_sinOrigin, _cosOrigin) = Authalic(sin);
        _stretch = ellipsoid.SemiMajorAxis * cos / (Math.Sqrt(1 - _e2 * sin * sin) * _radius * _cosOrigin);
    }

    /// <inheritdoc/>
    public EastNorth Forward(double latitude, double longitude)
    {
        var (sin, cos) = Authalic(Math.Sin(latitude));
        var (sinLon, cosLon) = Math.SinCos(longitude - _longitudeOfOrigin);
        var b = _radius * Math.Sqrt(2 / (1 + _sinOrigin * sin + _cosOrigin * cos * cosLon));
        return new(
            _falseEasting + b * _stretch * cos * sinLon,
            _falseNorthing + b / _stretch * (_cosOrigin * sin - _sinOrigin * cos * cosLon));
    }

    /// <inheritdoc/>
    public (double Latitude, double Longitude) Inverse(EastNorth point)
    {
        double x = (point.Easting - _falseEasting) / _stretch, y = (point.Northing - _falseNorthing) * _stretch;
        var rho = Math.Sqrt(x * x + y * y);
        if (rho == 0)
            return (Geodetic(_sinOrigin), _longitudeOfOrigin);
        var (sin, cos) = Math.SinCos(2 * Math.Asin(rho / (2 * _radius)));
        return (
            Geodetic(cos * _sinOrigin + y / rho * sin * _cosOrigin),
            _longitudeOfOrigin + Math.Atan2(x * sin, rho * _cosOrigin * cos - y * _sinOrigin * sin));
    }

    /// <summary>Sine and cosine of the authalic latitude, that of the sphere of equal area.</summary>
    private (double Sin, double Cos) Authalic(double sinLatitude)
    {
        var sin = Q(sinLatitude) / _polarQ;
        return (sin, Math.Sqrt((1 - sin) * (1 + sin)));
    }

    /// <summary>The area between the equator and a latitude, in units of pi a^2 (Snyder 3-12).</summary>
    private double Q(double sin) => (1 - _e2) * (sin / (1 - _e2 * sin * sin) + Math.Atanh(_e * sin) / _e);

    /// <summary>The geodetic latitude of an authalic one, by Newton's method (Snyder 3-16); the usual series stops at about 1 mm.</summary>
    private double Geodetic(double sinAuthalic)
    {
        var q = sinAuthalic * _polarQ;
        var latitude = Math.Asin(sinAuthalic);
        for (var step = 0; step < 4; step++)
        {
            var (sin, cos) = Math.SinCos(latitude);
            var w = 1 - _e2 * sin * sin;
            latitude += w * w / (2 * cos * (1 - _e2)) * (q - Q(sin));
        }

        return latitude;
    }
}
