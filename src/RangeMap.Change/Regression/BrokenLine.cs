namespace RangeMap.Change;

/// <summary>
/// Two straight pieces that meet: y = b0 + b1 t + b2 max(0, t - psi), with psi where the sum of squared residuals is
/// least (the range-distance curves of Shigesada, Kawasaki and Takeda 1995, American Naturalist 146:229-251; exact
/// search after Hudson 1966, Journal of the American Statistical Association 61:1097-1129; docs/methods/spread.md, eq. 9).
/// </summary>
/// <param name="Break">psi, in the unit of t.</param>
/// <param name="SlopeBefore">b1.</param>
/// <param name="SlopeAfter">b1 + b2.</param>
/// <param name="ResidualSquares">Least sum of squared residuals.</param>
/// <param name="N">Number of points.</param>
public sealed record BrokenLine(double Break, double SlopeBefore, double SlopeAfter, double ResidualSquares, int N)
{
    /// <summary>Least number of points on each side of the break.</summary>
    public const int LeastSide = 4;

    /// <summary>Fits the two pieces.</summary>
    /// <param name="t">Finite numbers in ascending order, all different.</param>
    /// <param name="y">As many finite numbers.</param>
    /// <returns>The best broken line; null with fewer than eight points.</returns>
    public static BrokenLine? Fit(double[] t, double[] y)
    {
        BrokenLine? best = null;
        for (var left = LeastSide; left <= t.Length - LeastSide; left++)
        {
            // Between two points the free pieces meet where they meet; at a point the pieces are made to meet.
            var free = Meeting(t, y, left);
            if (free is not null && (best is null || free.ResidualSquares < best.ResidualSquares))
                best = free;
            foreach (var knot in (ReadOnlySpan<double>)[t[left - 1], t[left]])
            {
                var bound = At(t, y, knot);
                if (best is null || bound.ResidualSquares < best.ResidualSquares)
                    best = bound;
            }
        }

        return best;
    }

    /// <summary>Akaike's criterion n ln(RSS / n) + 2k of a broken line (k = 5, the break among them).</summary>
    public double Criterion => Akaike(ResidualSquares, N, 5);

    /// <summary>n ln(RSS / n) + 2k; negative infinity for a perfect fit.</summary>
    public static double Akaike(double residualSquares, int n, int parameters) =>
        n * Math.Log(residualSquares / n) + 2 * parameters;

    private static BrokenLine? Meeting(double[] t, double[] y, int left)
    {
        var before = LeastSquaresLine.Fit(t.AsSpan(0, left), y.AsSpan(0, left));
        var after = LeastSquaresLine.Fit(t.AsSpan(left), y.AsSpan(left));
        var meet = (before.Intercept - after.Intercept) / (after.Slope - before.Slope);
        return meet >= t[left - 1] && meet <= t[left]
            ? new(meet, before.Slope, after.Slope, before.ResidualSquares + after.ResidualSquares, t.Length)
            : null;
    }

    // The bend b2 is the slope of the residuals of y on the residuals of max(0, t - psi), both after a straight line.
    private static BrokenLine At(double[] t, double[] y, double knot)
    {
        var hinge = Array.ConvertAll(t, x => Math.Max(0, x - knot));
        var straightHinge = LeastSquaresLine.Fit(t, hinge);
        double cross = 0;
        for (var i = 0; i < t.Length; i++)
            cross += (hinge[i] - straightHinge.Intercept - straightHinge.Slope * t[i]) * y[i];
        var bend = straightHinge.ResidualSquares > 0 ? cross / straightHinge.ResidualSquares : 0;
        var rest = LeastSquaresLine.Fit(t, [.. y.Select((value, i) => value - bend * hinge[i])]);
        return new(knot, rest.Slope, rest.Slope + bend, rest.ResidualSquares, t.Length);
    }
}
