namespace RangeMap.Change;

/// <summary>
/// The weighted line of later on earlier logits over the taxa of a group (docs/methods/relative-change.md, eq. 1 to 5; after Telfer,
/// Preston and Rothery 2002).
/// </summary>
internal sealed record RelativeLine
{
    private const int MostRounds = 500;
    private const double Settled = 1e-10;

    private RelativeLine()
    {
    }

    /// <summary>Intercept and slope of the line.</summary>
    internal required (double Intercept, double Slope) Line { get; init; }

    /// <summary>Variance of a residual: A + B z.</summary>
    internal required (double A, double B) Variance { get; init; }

    /// <summary>Residual over its standard deviation, by taxon.</summary>
    internal required double[] Index { get; init; }

    /// <summary>
    /// The same with the pull of each taxon on its own line taken out, over the standard deviation that the weighted residuals really have:
    /// what R calls the standardised residual of the weighted line.
    /// </summary>
    internal required double[] Adjusted { get; init; }

    /// <summary>logit of the share of squares, half a square added on either side.</summary>
    internal static double Logit(int occupied, int squares) => Math.Log((occupied + 0.5) / (squares - occupied + 0.5));

    /// <summary>Fits line and variance in turn until they settle; null where they do not, or where the residuals have no scatter.</summary>
    /// <param name="squares">Number of squares recorded in both periods.</param>
    /// <param name="before">Squares of each taxon among them in the earlier period, at least three taxa.</param>
    /// <param name="after">The same in the later period.</param>
    internal static RelativeLine? Fit(int squares, ReadOnlySpan<int> before, ReadOnlySpan<int> after)
    {
        double[] x = new double[before.Length], y = new double[before.Length], weights = new double[before.Length];
        for (var i = 0; i < x.Length; i++)
            (x[i], y[i], weights[i]) = (Logit(before[i], squares), Logit(after[i], squares), 1);

        var (line, variance) = ((0.0, 0.0), (0.0, 0.0));
        for (var round = 0; round < MostRounds; round++)
        {
            if (Weighted(x, y, weights) is not { } next)
                return null;

            var nextVariance = VarianceOf(x, y, next, squares);
            var moved = new[] { next.Intercept - line.Item1, next.Slope - line.Item2, nextVariance.A - variance.Item1, nextVariance.B - variance.Item2 }.Max(Math.Abs);
            (line, variance) = (next, nextVariance);
            for (var i = 0; i < x.Length; i++)
                weights[i] = 1 / (variance.Item1 + variance.Item2 * Z(line, x[i], squares));
            // Residuals that are nothing but rounding have no scatter to measure by.
            if (weights.Any(weight => !(weight < 1e12)))
                return null;
            if (moved < Settled)
                return Standardised(x, y, line, variance, weights);
        }

        return null;
    }

    private static (double Intercept, double Slope)? Weighted(double[] x, double[] y, double[] weights)
    {
        double sum = 0, sumX = 0, sumY = 0, xx = 0, xy = 0;
        for (var i = 0; i < x.Length; i++)
            (sum, sumX, sumY) = (sum + weights[i], sumX + weights[i] * x[i], sumY + weights[i] * y[i]);
        for (var i = 0; i < x.Length; i++)
            (xx, xy) = (xx + weights[i] * (x[i] - sumX / sum) * (x[i] - sumX / sum), xy + weights[i] * (x[i] - sumX / sum) * (y[i] - sumY / sum));
        return xx > 0 ? (sumY / sum - xy / xx * sumX / sum, xy / xx) : null;
    }

    // Squared residuals on z by plain least squares; a negative part is set to 0 and the other fitted alone.
    private static (double A, double B) VarianceOf(double[] x, double[] y, (double Intercept, double Slope) line, int squares)
    {
        double[] z = new double[x.Length], ones = new double[x.Length], squared = new double[x.Length];
        for (var i = 0; i < x.Length; i++)
        {
            var residual = y[i] - line.Intercept - line.Slope * x[i];
            (z[i], ones[i], squared[i]) = (Z(line, x[i], squares), 1, residual * residual);
        }

        var both = Weighted(z, squared, ones) ?? (squared.Average(), 0);
        if (both.Intercept < 0)
            return (0, z.Zip(squared, (a, b) => a * b).Sum() / z.Sum(a => a * a));
        return both.Slope < 0 ? (squared.Average(), 0) : both;
    }

    // Binomial variance of a logit at the fitted share.
    private static double Z((double Intercept, double Slope) line, double x, int squares)
    {
        var p = 1 / (1 + Math.Exp(-(line.Intercept + line.Slope * x)));
        return 1 / (squares * p * (1 - p));
    }

    private static RelativeLine Standardised(double[] x, double[] y, (double Intercept, double Slope) line, (double A, double B) variance, double[] weights)
    {
        double sum = weights.Sum(), mean = x.Zip(weights, (a, w) => a * w).Sum() / sum, xx = x.Zip(weights, (a, w) => w * (a - mean) * (a - mean)).Sum();
        double[] index = new double[x.Length], adjusted = new double[x.Length];
        for (var i = 0; i < x.Length; i++)
            index[i] = (y[i] - line.Intercept - line.Slope * x[i]) * Math.Sqrt(weights[i]);

        var deviation = Math.Sqrt(index.Sum(residual => residual * residual) / (x.Length - 2));
        for (var i = 0; i < x.Length; i++)
        {
            var leverage = weights[i] * (1 / sum + (x[i] - mean) * (x[i] - mean) / xx);
            adjusted[i] = index[i] / (deviation * Math.Sqrt(Math.Max(1 - leverage, 1e-9)));
        }

        return new() { Line = line, Variance = variance, Index = index, Adjusted = adjusted };
    }
}
