namespace RangeMap.Change;

/// <summary>A change in percent with its interval, found on the scale of logarithms so that a halving and a doubling are equally far from 0.</summary>
internal static class PercentChange
{
    /// <summary>100 (after / before - 1).</summary>
    internal static double Of(double before, double after) => 100 * (after - before) / before;

    /// <summary>The interval exp(log ± half) in percent, widened where needed to hold the value itself (docs/methods/range-size.md, eq. 4).</summary>
    internal static Interval Around(double value, double logRatio, double half) => new(
        Math.Min(value, 100 * (Math.Exp(logRatio - half) - 1)),
        Math.Max(value, 100 * (Math.Exp(logRatio + half) - 1)));
}
