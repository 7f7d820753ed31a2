namespace RangeMap.Change;

/// <summary>
/// Local frequencies brought to those of a well-recorded neighbourhood (docs/methods/neighbourhood-frequency.md, eq. 3 to 5; after Hill 2012).
/// </summary>
internal static class FrequencyScaling
{
    /// <summary>A taxon found in every neighbour is still not quite certain: its number of discoveries would have no bound.</summary>
    internal const double MostFrequent = 0.99999;

    private const int MostDoublings = 20;

    /// <summary>1 - (1 - f)^alpha, at most <see cref="MostFrequent"/>.</summary>
    internal static double Scaled(double frequency, double alpha) =>
        Math.Min(MostFrequent, 1 - Math.Exp(alpha * Math.Log(1 - Math.Min(frequency, MostFrequent))));

    /// <summary>
    /// The alpha at which the frequency-weighted mean of the scaled frequencies is the standard one; null where no alpha within a
    /// factor of a million reaches it.
    /// </summary>
    /// <param name="frequencies">Local frequencies above 0.</param>
    /// <param name="standard">The mean to reach, in (0, 1).</param>
    internal static double? Alpha(ReadOnlySpan<double> frequencies, double standard)
    {
        // Discoveries expected of each taxon; scaling multiplies them all by alpha.
        var discoveries = new double[frequencies.Length];
        for (var i = 0; i < discoveries.Length; i++)
            discoveries[i] = -Math.Log(1 - Math.Min(frequencies[i], MostFrequent));

        double at = 0, gap = Mean(discoveries, 0) - standard, step = gap < 0 ? Math.Log(2) : -Math.Log(2);
        for (var i = 0; i < MostDoublings; i++)
        {
            double next = at + step, nextGap = Mean(discoveries, next) - standard;
            if (gap == 0 || gap * nextGap <= 0)
                return Math.Exp(Between(discoveries, standard, at, gap, next, nextGap));
            (at, gap) = (next, nextGap);
        }

        return null;
    }

    /// <summary>
    /// Marks the benchmarks: taxa whose rank by scaled frequency, divided by the expected number of taxa, lies below the limit. Taxa of
    /// one frequency share their middle rank.
    /// </summary>
    /// <returns>The least frequency of a benchmark; infinite where there is none.</returns>
    internal static float BenchmarkFrom(ReadOnlySpan<float> scaled, double limit)
    {
        var sorted = scaled.ToArray();
        Array.Sort(sorted, (a, b) => b.CompareTo(a));
        double expected = 0;
        foreach (var frequency in sorted)
            expected += frequency;

        var from = float.PositiveInfinity;
        for (int first = 0, end; first < sorted.Length; first = end)
        {
            for (end = first + 1; end < sorted.Length && sorted[end] == sorted[first];)
                end++;
            if ((first + 1 + end) / 2.0 / expected >= limit)
                break;
            from = sorted[first];
        }

        return from;
    }

    // Regula falsi with the Illinois rule, on ln alpha.
    private static double Between(double[] discoveries, double standard, double a, double gapA, double b, double gapB)
    {
        for (var i = 0; i < 100 && Math.Abs(b - a) > 1e-10; i++)
        {
            var next = gapA == gapB ? (a + b) / 2 : b - gapB * (b - a) / (gapB - gapA);
            var gap = Mean(discoveries, next) - standard;
            if (Math.Abs(gap) < 1e-13)
                return next;
            if (gap * gapB <= 0)
                (a, gapA) = (b, gapB);
            else
                gapA /= 2;
            (b, gapB) = (next, gap);
        }

        return b;
    }

    private static double Mean(double[] discoveries, double logAlpha)
    {
        double alpha = Math.Exp(logAlpha), sum = 0, squares = 0;
        foreach (var expected in discoveries)
        {
            var scaled = 1 - Math.Exp(-alpha * expected);
            (sum, squares) = (sum + scaled, squares + scaled * scaled);
        }

        return squares / sum;
    }
}
