namespace RangeMap.Change;

/// <summary>Weighted quantiles in time proportional to the number of values, by partitioning in place.</summary>
internal static class WeightedSelection
{
    /// <summary>The smallest value at which the weight of all values not above it reaches the target.</summary>
    /// <param name="values">At least one value; reordered.</param>
    /// <param name="weights">A positive weight for each value; reordered with them.</param>
    /// <param name="target">Weight to reach; at or above the total it gives the greatest value.</param>
    public static double Select(Span<double> values, Span<double> weights, double target)
    {
        int from = 0, to = values.Length;
        while (to - from > 1)
        {
            var pivot = MiddleOf(values[from], values[(from + to) / 2], values[to - 1]);
            var (below, above, weightBelow, weightAt) = Partition(values, weights, from, to, pivot);
            if (weightBelow >= target && below > from)
            {
                to = below;
            }
            else if (weightBelow + weightAt >= target || above == to)
            {
                return pivot;
            }
            else
            {
                target -= weightBelow + weightAt;
                from = above;
            }
        }

        return values[from];
    }

    // Three-way partition: [from, below) is less than the pivot, [below, above) equals it, [above, to) is greater.
    private static (int Below, int Above, double WeightBelow, double WeightAt) Partition(
        Span<double> values, Span<double> weights, int from, int to, double pivot)
    {
        int below = from, above = to, i = from;
        double weightBelow = 0, weightAt = 0;
        while (i < above)
        {
            var value = values[i];
            if (value < pivot)
            {
                weightBelow += weights[i];
                Swap(values, weights, below++, i++);
            }
            else if (value > pivot)
            {
                Swap(values, weights, --above, i);
            }
            else
            {
                weightAt += weights[i++];
            }
        }

        return (below, above, weightBelow, weightAt);
    }

    private static void Swap(Span<double> values, Span<double> weights, int i, int j)
    {
        (values[i], values[j]) = (values[j], values[i]);
        (weights[i], weights[j]) = (weights[j], weights[i]);
    }

    private static double MiddleOf(double a, double b, double c) =>
        Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));
}
