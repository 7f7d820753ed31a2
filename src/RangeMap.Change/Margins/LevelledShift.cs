namespace RangeMap.Change;

/// <summary>
/// A shift of a margin after the better recorded period was thinned to as many records of the group as the other has, many times
/// (docs/methods/margins.md, eq. 4 to 6; Hassall and Thompson 2010).
/// </summary>
/// <param name="Before">The margin in the earlier period; the median of the draws where that is the one that was thinned.</param>
/// <param name="After">The margin in the later period; likewise.</param>
/// <param name="Variance">Variance of the margin over the draws; 0 where nothing was thinned.</param>
/// <param name="Middle">The middle 95 % of the shifts.</param>
internal readonly record struct LevelledShift(double Before, double After, double Variance, Interval Middle)
{
    // Keeps the streams of these draws apart from those of the blocks.
    private const ulong FirstStream = 1UL << 32;

    /// <summary>A margin from what a draw holds of a period's records; not finite where that is too little.</summary>
    internal delegate double Thinned(ref RecordDraw draw);

    /// <summary>The median shift, in km outwards.</summary>
    public double Km => After - Before;

    /// <summary>Thins and measures; null where fewer than nine draws in ten leave enough squares.</summary>
    /// <param name="frame">The survey.</param>
    /// <param name="before">The margin of the earlier period from all its records.</param>
    /// <param name="after">The margin of the later period from all its records.</param>
    /// <param name="thinnedBefore">The margin of the earlier period from a draw.</param>
    /// <param name="thinnedAfter">The margin of the later period from a draw.</param>
    internal static LevelledShift? Of(SurveyFrame frame, double before, double after, Thinned thinnedBefore, Thinned thinnedAfter)
    {
        var (m1, m2) = (frame.Before.Records, frame.After.Records);
        if (m1 == m2)
            return new(before, after, 0, new(after - before, after - before));

        var margins = Draw(frame, Math.Max(m1, m2), Math.Min(m1, m2), m2 > m1 ? thinnedAfter : thinnedBefore);
        if (margins is null)
            return null;
        var moments = new Moments();
        foreach (var margin in margins)
            moments.Add(margin);
        var (low, median, high) = (SortedQuantile.Of(margins, 0.025), SortedQuantile.Of(margins, 0.5), SortedQuantile.Of(margins, 0.975));
        return m2 > m1
            ? new(before, median, moments.Variance, new(low - before, high - before))
            : new(median, after, moments.Variance, new(after - high, after - low));
    }

    private static double[]? Draw(SurveyFrame frame, long pool, long wanted, Thinned margin)
    {
        var (margins, n, draws) = (new double[frame.Options.Draws], 0, frame.Options.Draws);
        for (var i = 0; i < draws; i++)
        {
            var draw = new RecordDraw(pool, wanted, new(frame.Options.Seed, FirstStream + (ulong)i));
            var km = margin(ref draw);
            if (double.IsFinite(km))
                margins[n++] = km;
        }

        if (n < 0.9 * draws)
            return null;
        Array.Resize(ref margins, n);
        Array.Sort(margins);
        return margins;
    }
}
