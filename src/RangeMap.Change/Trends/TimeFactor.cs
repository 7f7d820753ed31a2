namespace RangeMap.Change;

/// <summary>
/// The factor x by which discoveries of a taxon in a period differ from those foreseen: the sum of 1 - exp(-Q x) over the squares equals
/// the number of squares where it was found (docs/methods/neighbourhood-frequency.md, eq. 7; after Hill 2012).
/// </summary>
internal static class TimeFactor
{
    private const int MostSteps = 200;

    /// <summary>Discoveries foreseen: -ln(1 - s f).</summary>
    /// <param name="effort">s, the share of the square's benchmarks found, 0 to 1.</param>
    /// <param name="frequency">f, scaled local frequency, below 1.</param>
    internal static double Foreseen(double effort, double frequency) => -Math.Log(1 - effort * frequency);

    /// <summary>x; null where the taxon was found nowhere, or everywhere, since no finite x above 0 fits then.</summary>
    /// <param name="foreseen">Q of each square, above 0.</param>
    /// <param name="found">Number of squares where the taxon was found.</param>
    internal static double? Solve(ReadOnlySpan<double> foreseen, int found)
    {
        if (found <= 0 || found >= foreseen.Length)
            return null;

        double x = found / Sum(foreseen);
        // The sum is concave in x and x starts below the root, so Newton's steps rise to it and never pass it.
        for (var step = 0; step < MostSteps; step++)
        {
            double left = found, slope = 0;
            foreach (var q in foreseen)
            {
                var missed = Math.Exp(-q * x);
                (left, slope) = (left - 1 + missed, slope + q * missed);
            }

            var next = x + left / slope;
            if (!double.IsFinite(next))
                return null;
            if (Math.Abs(next - x) <= 1e-12 * x)
                return next;
            x = next;
        }

        return x;
    }

    private static double Sum(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (var value in values)
            sum += value;
        return sum;
    }
}
