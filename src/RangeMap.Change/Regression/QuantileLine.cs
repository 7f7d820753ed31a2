namespace RangeMap.Change;

/// <summary>
/// The straight line y = a + b t that leaves a share tau of the points below it: the minimum of the sum of
/// rho(y - a - b t), rho(u) = u (tau - 1{u &lt; 0}) (Koenker and Bassett 1978, Econometrica 46:33-50;
/// docs/methods/spread.md, eq. 3). The minimum is exact, not approached.
/// </summary>
/// <param name="Intercept">a, in the unit of y, at t = 0.</param>
/// <param name="Slope">b; where several lines are optimal, the middle of their slopes.</param>
/// <param name="Objective">The minimum, in the unit of y; 0 when all points lie on the line.</param>
/// <param name="Slopes">The slopes of all optimal lines; a single value when the line is unique.</param>
/// <param name="N">Number of points.</param>
public sealed record QuantileLine(double Intercept, double Slope, double Objective, Interval Slopes, int N)
{
    /// <summary>False when lines of different slope fit equally well.</summary>
    public bool IsUnique => Slopes.High - Slopes.Low <= 1e-9 * (1 + Math.Abs(Slope));

    /// <summary>Fits the line.</summary>
    /// <param name="t">Finite numbers, at least two different ones.</param>
    /// <param name="y">As many finite numbers.</param>
    /// <param name="tau">Share of the points below the line, in (0, 1).</param>
    /// <exception cref="ArgumentException">Unequal lengths, or fewer than two values of t.</exception>
    /// <exception cref="ArgumentOutOfRangeException">tau is not in (0, 1).</exception>
    public static QuantileLine Fit(ReadOnlySpan<double> t, ReadOnlySpan<double> y, double tau)
    {
        if (!(tau > 0 && tau < 1))
            throw new ArgumentOutOfRangeException(nameof(tau), tau, "The quantile must lie between 0 and 1.");
        if (t.Length != y.Length)
            throw new ArgumentException("Each point needs both numbers.", nameof(y));

        var descent = new QuantileDescent(t.Length, tau);
        // Years are far from 0: measured from the first point they lose no digits.
        var origin = t.Length > 0 ? t[0] : 0;
        for (var i = 0; i < t.Length; i++)
            descent.Add(t[i] - origin, y[i], 1);
        if (!descent.TrySolve(0, out var line))
            throw new ArgumentException("A line needs at least two different values of t.", nameof(t));

        var objective = descent.Objective;
        var (least, greatest) = (descent.ExtremeFrom(line, -1), descent.ExtremeFrom(line, 1));
        var slope = (least.Slope + greatest.Slope) / 2;
        var intercept = (least.Intercept + greatest.Intercept) / 2;
        return new(intercept - slope * origin, slope, objective, new(least.Slope, greatest.Slope), t.Length);
    }
}
