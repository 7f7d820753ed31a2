using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>Intervals of shares and of the difference of two.</summary>
internal static class SharesOfVisits
{
    /// <summary>The 0.975 quantile of the standard normal distribution.</summary>
    internal static readonly double Z = Normal.InvCDF(0, 1, 0.975);

    /// <summary>Score interval of a share (Wilson 1927; docs/methods/reporting-rate.md, eq. 2).</summary>
    /// <param name="share">In [0, 1].</param>
    /// <param name="n">Number of independent trials, above 0; need not be whole.</param>
    internal static Interval Wilson(double share, double n)
    {
        var square = Z * Z;
        var middle = (share + square / (2 * n)) / (1 + square / n);
        var half = Z / (1 + square / n) * Math.Sqrt(share * (1 - share) / n + square / (4 * n * n));
        return new(Math.Max(0, middle - half), Math.Min(1, middle + half));
    }

    /// <summary>
    /// Interval of after - before from the interval of each and their correlation (Newcombe 1998 for shares; Zou and Donner 2008 for
    /// any two estimates; docs/methods/reporting-rate.md, eq. 4).
    /// </summary>
    /// <param name="before">The first estimate.</param>
    /// <param name="ofBefore">Its interval.</param>
    /// <param name="after">The second estimate.</param>
    /// <param name="ofAfter">Its interval.</param>
    /// <param name="correlation">Of the two estimates, in [-1, 1].</param>
    internal static Interval OfDifference(double before, Interval ofBefore, double after, Interval ofAfter, double correlation) =>
        new(after - before - Half(after - ofAfter.Low, ofBefore.High - before, correlation), after - before + Half(ofAfter.High - after, before - ofBefore.Low, correlation));

    /// <summary>
    /// p-value that fits an interval: the half of it on the side of 0 stands for 1.96 standard errors. 1 where the estimate is 0.
    /// </summary>
    internal static double PValue(double value, Interval interval)
    {
        var half = value > 0 ? value - interval.Low : interval.High - value;
        return value == 0 ? 1 : half > 0 ? 2 * Normal.CDF(0, 1, -Z * Math.Abs(value) / half) : 0;
    }

    private static double Half(double a, double b, double correlation) => Math.Sqrt(Math.Max(0, a * a + b * b - 2 * correlation * a * b));
}
