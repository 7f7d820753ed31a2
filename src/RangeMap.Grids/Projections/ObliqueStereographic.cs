namespace RangeMap.Grids;

/// <summary>
/// Double stereographic projection: the ellipsoid conformally onto a sphere, the sphere onto the plane
/// (EPSG method 9809, IOGP guidance note 7-2). Written with the isometric latitude q, on which the step to the sphere is linear.
/// </summary>
internal sealed class ObliqueStereographic : IProjection
{
    private readonly ConformalLatitude _conformal;
    private readonly double _n, _c, _diameter, _originOnSphere, _sinOrigin, _cosOrigin, _longitudeOfOrigin, _falseEasting, _falseNorthing;

    /// <summary>Prepares the constants.</summary>
    /// <param name="ellipsoid">The ellipsoid.</param>
    /// <param name="latitudeOfOrigin">Degrees.</param>
    /// <param name="longitudeOfOrigin">Degrees.</param>
    /// <param name="scale">k0, at the origin.</param>
    /// <param name="falseEasting">Metres.</param>
    /// <param name="falseNorthing">Metres.</param>
    public ObliqueStereographic(Ellipsoid ellipsoid, double latitudeOfOrigin, double longitudeOfOrigin, double scale, double falseEasting, double falseNorthing)
    {
        var e2 = ellipsoid.EccentricitySquared;
        var (sin, cos) = Math.SinCos(latitudeOfOrigin * Angle.RadiansPerDegree);
        var w = 1 - e2 * sin * sin;
        var radius = ellipsoid.SemiMajorAxis * Math.Sqrt(1 - e2) / w; // sqrt(rho nu)
        _conformal = new(ellipsoid);
        _n = Math.Sqrt(1 + e2 * cos * cos * cos * cos / (1 - e2));
        _diameter = 2 * radius * scale;
        _longitudeOfOrigin = longitudeOfOrigin * Angle.RadiansPerDegree;
        (_falseEasting, _falseNorthing) = (falseEasting, falseNorthing);
        // Scales agree at the origin when sin phi0 = n sin chi0 there; c is what the isometric latitude then still lacks.
        _c = Math.Atanh(sin / _n) - _n * Isometric(latitudeOfOrigin * Angle.RadiansPerDegree);
        _originOnSphere = Math.Asin(sin / _n);
        (_sinOrigin, _cosOrigin) = Math.SinCos(_originOnSphere);
    }

    /// <inheritdoc/>
    public EastNorth Forward(double latitude, double longitude)
    {
        var isometric = _n * Isometric(latitude) + _c;
        double sin = Math.Tanh(isometric), cos = 1 / Math.Cosh(isometric);
        var (sinLon, cosLon) = Math.SinCos(_n * (longitude - _longitudeOfOrigin));
        var b = 1 + sin * _sinOrigin + cos * _cosOrigin * cosLon;
        return new(
            _falseEasting + _diameter * cos * sinLon / b,
            _falseNorthing + _diameter * (sin * _cosOrigin - cos * _sinOrigin * cosLon) / b);
    }

    /// <inheritdoc/>
    public (double Latitude, double Longitude) Inverse(EastNorth point)
    {
        double x = (point.Easting - _falseEasting) / _diameter, y = (point.Northing - _falseNorthing) / _diameter;
        var rho = Math.Sqrt(x * x + y * y);
        if (rho == 0)
            return (Geodetic(_originOnSphere), _longitudeOfOrigin);
        var (sin, cos) = Math.SinCos(2 * Math.Atan(rho)); // the arc from the origin, on the sphere
        var onSphere = Math.Asin(cos * _sinOrigin + y / rho * sin * _cosOrigin);
        var turn = Math.Atan2(x * sin, rho * _cosOrigin * cos - y * _sinOrigin * sin);
        return (Geodetic(onSphere), _longitudeOfOrigin + turn / _n);
    }

    private double Isometric(double latitude) => Math.Asinh(_conformal.FromGeodetic(Math.Tan(latitude)));

    private double Geodetic(double onSphere) =>
        Math.Atan(_conformal.ToGeodetic(Math.Sinh((Math.Atanh(Math.Sin(onSphere)) - _c) / _n)));
}
