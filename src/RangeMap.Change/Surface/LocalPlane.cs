namespace RangeMap.Change;

/// <summary>
/// Speed and direction of spread from arrival years round a place: the plane through them by least squares, its gradient in years a kilometre, and the speed as the inverse
/// of its length (docs/methods/arrival-surface.md, eq. 6 and 7).
/// </summary>
/// <param name="East">Gradient towards the east, years a kilometre.</param>
/// <param name="North">Gradient towards the north.</param>
/// <param name="Error">Standard error of the gradient's length; 0 where three points determine the plane.</param>
/// <param name="Freedom">Degrees of freedom behind the error.</param>
public readonly record struct LocalPlane(double East, double North, double Error, int Freedom)
{
    /// <summary>Length of the gradient, years a kilometre.</summary>
    public double Slowness => Math.Sqrt(East * East + North * North);

    /// <summary>Kilometres a year.</summary>
    public double KmPerYear => 1 / Slowness;

    /// <summary>Direction of spread, degrees clockwise from grid north, 0 to 360.</summary>
    public double Bearing => (Math.Atan2(East, North) * 180 / Math.PI + 360) % 360;

    /// <summary>The 95 % interval of the speed, by that of the gradient's length; null where it reaches 0: the speed is then not measurable.</summary>
    public Interval? SpeedInterval
    {
        get
        {
            var reach = Freedom > 0 ? MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, Freedom, 0.975) * Error : 0;
            return Slowness - reach > 0 ? new(1 / (Slowness + reach), 1 / (Slowness - reach)) : null;
        }
    }

    /// <summary>Fits the plane; null for fewer than three points, or points on one line.</summary>
    /// <param name="points">Places and years; finite.</param>
    public static LocalPlane? Fit(IReadOnlyList<(PlanePoint Place, double Year)> points)
    {
        var n = points.Count;
        if (n < 3)
            return null;
        double mx = points.Average(p => p.Place.X), my = points.Average(p => p.Place.Y), mt = points.Average(p => p.Year);
        double xx = 0, xy = 0, yy = 0, xt = 0, yt = 0;
        foreach (var (place, year) in points)
        {
            double x = place.X - mx, y = place.Y - my, t = year - mt;
            (xx, xy, yy, xt, yt) = (xx + x * x, xy + x * y, yy + y * y, xt + x * t, yt + y * t);
        }

        var determinant = xx * yy - xy * xy;
        if (!(determinant > 1e-9 * (xx + yy) * (xx + yy)))
            return null;
        double b = (xt * yy - yt * xy) / determinant, c = (yt * xx - xt * xy) / determinant;
        var residual = points.Sum(p => Squared(p.Year - mt - b * (p.Place.X - mx) - c * (p.Place.Y - my)));
        var variance = n > 3 ? residual / (n - 3) : 0;
        var length = b * b + c * c;
        // var|g| = (b2 Vbb + c2 Vcc + 2bc Vbc) / |g|2, V the inverse of the sums of squares times the variance.
        var error = length > 0 ? Math.Sqrt(variance * (b * b * yy + c * c * xx - 2 * b * c * xy) / determinant / length) : double.PositiveInfinity;
        return new(b, c, error, n - 3);
    }

    private static double Squared(double value) => value * value;
}
