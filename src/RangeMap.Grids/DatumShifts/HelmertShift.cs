namespace RangeMap.Grids;

/// <summary>A similarity transformation of seven parameters from one datum to another, position-vector convention (EPSG method 9606).</summary>
internal sealed class HelmertShift
{
    private readonly double _tx, _ty, _tz;
    private readonly Matrix3 _forward, _inverse;

    /// <summary>Makes the shift from its published parameters.</summary>
    /// <param name="tx">Metres.</param>
    /// <param name="ty">Metres.</param>
    /// <param name="tz">Metres.</param>
    /// <param name="rx">Seconds of arc.</param>
    /// <param name="ry">Seconds of arc.</param>
    /// <param name="rz">Seconds of arc.</param>
    /// <param name="scale">Parts per million.</param>
    public HelmertShift(double tx, double ty, double tz, double rx = 0, double ry = 0, double rz = 0, double scale = 0)
    {
        (_tx, _ty, _tz) = (tx, ty, tz);
        double m = 1 + scale * 1e-6, x = rx * Angle.RadiansPerSecond, y = ry * Angle.RadiansPerSecond, z = rz * Angle.RadiansPerSecond;
        _forward = new(m, -m * z, m * y, m * z, m, -m * x, -m * y, m * x, m);
        _inverse = _forward.Inverse();
    }

    /// <summary>Source datum to target datum.</summary>
    public Geocentric Forward(Geocentric point)
    {
        var turned = _forward.Times(point);
        return new(turned.X + _tx, turned.Y + _ty, turned.Z + _tz);
    }

    /// <summary>Target datum to source datum: the exact solution, so that there and back again closes.</summary>
    public Geocentric Inverse(Geocentric point) => _inverse.Times(new(point.X - _tx, point.Y - _ty, point.Z - _tz));

    /// <summary>A 3 by 3 matrix, row by row.</summary>
    private readonly record struct Matrix3(double A, double B, double C, double D, double E, double F, double G, double H, double I)
    {
        public Geocentric Times(Geocentric p) =>
            new(A * p.X + B * p.Y + C * p.Z, D * p.X + E * p.Y + F * p.Z, G * p.X + H * p.Y + I * p.Z);

        /// <summary>The inverse by cofactors; the matrix of a datum shift is close to the unit matrix and never singular.</summary>
        public Matrix3 Inverse()
        {
            double a = E * I - F * H, d = F * G - D * I, g = D * H - E * G;
            var k = 1 / (A * a + B * d + C * g);
            return new(
                a * k, (C * H - B * I) * k, (B * F - C * E) * k,
                d * k, (A * I - C * G) * k, (C * D - A * F) * k,
                g * k, (B * G - A * H) * k, (A * E - B * D) * k);
        }
    }
}
