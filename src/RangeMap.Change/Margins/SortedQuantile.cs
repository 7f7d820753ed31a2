namespace RangeMap.Change;

/// <summary>The empirical quantile that interpolates between order statistics (type 7 of Hyndman and Fan 1996).</summary>
internal static class SortedQuantile
{
    /// <summary>The quantile of numbers in ascending order.</summary>
    /// <param name="sorted">At least one.</param>
    /// <param name="share">In [0, 1].</param>
    internal static double Of(ReadOnlySpan<double> sorted, double share)
    {
        var place = share * (sorted.Length - 1);
        var below = (int)place;
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
