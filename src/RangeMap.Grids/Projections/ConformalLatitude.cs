namespace RangeMap.Grids;

/// <summary>
/// The way between geodetic and conformal latitude, as tangents (C. F. F. Karney, "Transverse Mercator with an accuracy of a few
/// nanometers", J. Geodesy 85, 2011, equations 7 to 9 and 19 to 21). Its tangent is the hyperbolic sine of the isometric latitude.
/// </summary>
internal sealed class ConformalLatitude(Ellipsoid ellipsoid)
{
    private readonly double _e = Math.Sqrt(ellipsoid.EccentricitySquared);
    private readonly double _e2m = 1 - ellipsoid.EccentricitySquared;

    /// <summary>The tangent of the conformal latitude from that of the geodetic latitude.</summary>
    public double FromGeodetic(double tau)
    {
        var root = Math.Sqrt(1 + tau * tau);
        var sigma = Math.Sinh(_e * Math.Atanh(_e * tau / root));
        return tau * Math.Sqrt(1 + sigma * sigma) - sigma * root;
    }

    /// <summary>The inverse of <see cref="FromGeodetic"/> by Newton's method: three steps reach the last bit.</summary>
    public double ToGeodetic(double conformal)
    {
        var tau = conformal / _e2m;
        for (var step = 0; step < 3; step++)
        {
            var reached = FromGeodetic(tau);
            tau += (conformal - reached) * (1 + _e2m * tau * tau) / (_e2m * Math.Sqrt((1 + tau * tau) * (1 + reached * reached)));
        }

        return tau;
    }
}
