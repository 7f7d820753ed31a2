namespace RangeMap.Change;

/// <summary>
/// Change of a total from one period to another with an interval that takes blocks, not squares, as the independent units (docs/methods/range-size.md,
/// eq. 3 to 5): the linearised variance of a ratio of totals over clusters (Woodruff 1971, Journal of the American Statistical Association 66:411-414).
/// </summary>
internal static class RatioInterval
{
    /// <summary>Half a square, so that a total of 0 has a logarithm; the usual correction of counts (Haldane 1956, Annals of Human Genetics 20:309-311).</summary>
    private const double Half = 0.5;

    /// <summary>The change in percent and its interval; null where fewer than two blocks hold anything.</summary>
    /// <param name="before">Total of each block in the earlier period, not negative; their sum is more than 0.</param>
    /// <param name="after">The same in the later one.</param>
    public static (double Percent, Interval Interval)? OfTotals(ReadOnlySpan<double> before, ReadOnlySpan<double> after)
    {
        double sumBefore = 0, sumAfter = 0;
        var blocks = 0;
        for (var b = 0; b < before.Length; b++)
        {
            sumBefore += before[b];
            sumAfter += after[b];
            if (before[b] > 0 || after[b] > 0)
                blocks++;
        }

        if (blocks < 2 || !(sumBefore > 0))
            return null;
        var squares = 0.0;
        for (var b = 0; b < before.Length; b++)
        {
            var influence = after[b] / (sumAfter + Half) - before[b] / (sumBefore + Half);
            squares += influence * influence;
        }

        var error = Math.Sqrt(squares * blocks / (blocks - 1));
        var log = Math.Log((sumAfter + Half) / (sumBefore + Half));
        var reach = StudentQuantile.Of(blocks - 1) * error;
        var percent = 100 * (sumAfter / sumBefore - 1);
        return (percent, new(Math.Min(percent, Percent(log - reach)), Math.Max(percent, Percent(log + reach))));
    }

    private static double Percent(double logRatio) => 100 * (Math.Exp(logRatio) - 1);
}
