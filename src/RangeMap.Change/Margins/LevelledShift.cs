namespace RangeMap.Change;

/// <summary>
/// A shift of a margin after the better recorded period was thinned to as many records of the group as the other has, many times
/// (docs/methods/margins.md, eq. 3 to 6; Hassall and Thompson 2010).
/// </summary>
/// <param name="Before">The margin in the earlier period; the median of the draws where that is the one that was thinned.</param>
/// <param name="After">The margin in the later period; likewise.</param>
/// <param name="Variance">Variance of the margin over the draws; 0 where nothing was thinned.</param>
/// <param name="Middle">The middle 95 % of the shifts.</param>
internal readonly record struct LevelledShift(double Before, double After, double Variance, Interval Middle)
{
    // Keeps the streams of these draws apart from those of the blocks.
    private const ulong FirstStream = 1UL << 32;

    /// <summary>A margin from what a draw leaves of a period's records; not finite where that is too little.</summary>
    /// <param name="chance">A stream of its own.</param>
    internal delegate double Thinned(Pcg chance);

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

        var margins = Draw(frame.Options, m2 > m1 ? thinnedAfter : thinnedBefore);
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

    private static double[]? Draw(ChangeOptions options, Thinned margin)
    {
        var (margins, n) = (new double[options.Draws], 0);
        for (var i = 0; i < options.Draws; i++)
        {
            var km = margin(new(options.Seed, FirstStream + (ulong)i));
            if (double.IsFinite(km))
                margins[n++] = km;
        }

        if (n < 0.9 * options.Draws)
            return null;
        Array.Resize(ref margins, n);
        Array.Sort(margins);
        return margins;
    }
}
