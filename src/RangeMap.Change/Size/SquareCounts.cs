namespace RangeMap.Change;

/// <summary>
/// Change of the number of occupied squares: all of them, those surveyed in both periods, or those well surveyed in both
/// (docs/methods/range-size.md, eq. 1 to 4).
/// </summary>
internal static class SquareCounts
{
    /// <summary>All squares, whatever the effort.</summary>
    internal static ChangeEstimate All(SurveyFrame frame, TaxonRange range) =>
        Measure(frame, range, ChangeMethods.Squares, null, t => SizeWords.Raw(t.Gained, t.Lost, t.Kept, frame.Before.Squares, frame.After.Squares));

    /// <summary>Squares surveyed in both periods.</summary>
    internal static ChangeEstimate SurveyedBoth(SurveyFrame frame, TaxonRange range) =>
        Among(frame, range, ChangeMethods.SquaresBoth, frame.SurveyedBoth, false);

    /// <summary>Squares well surveyed in both periods.</summary>
    internal static ChangeEstimate WellSurveyedBoth(SurveyFrame frame, TaxonRange range) =>
        Among(frame, range, ChangeMethods.SquaresSurveyed, frame.WellSurveyedBoth, true);

    private static ChangeEstimate Among(SurveyFrame frame, TaxonRange range, string method, bool[] among, bool well)
    {
        var compared = among.AsSpan().Count(true);
        if (compared == 0)
            return ChangeEstimate.Refuse(range.Taxon, method, "%", 0, well ? SizeWords.NoWellSurveyed : SizeWords.NoCompared);
        return Measure(frame, range, method, among, t => SizeWords.Compared(t.Gained, t.Lost, t.Kept, compared, well) + (t.Kept == compared ? SizeWords.AllOccupied : null))
            with { N = compared };
    }

    private static ChangeEstimate Measure(SurveyFrame frame, TaxonRange range, string method, bool[]? among, Func<Tally, string> note)
    {
        var (blocks, before, after) = ByBlock(frame, range, among);
        var tally = Tally.Of(range, among);
        var estimate = Estimate(frame, range, method, blocks, before, after, tally);
        return estimate with { Before = tally.Before, After = tally.After, Note = note(tally) };
    }

    private static ChangeEstimate Estimate(SurveyFrame frame, TaxonRange range, string method, HeldBlocks blocks, int[] before, int[] after, Tally tally)
    {
        var (n, options) = (tally.Gained + tally.Lost + tally.Kept, frame.Options);
        if (tally.Before < options.MinimumSquares)
            return ChangeEstimate.Refuse(range.Taxon, method, "%", n, SizeWords.TooFewBefore(tally.Before, options.MinimumSquares, method != ChangeMethods.Squares));
        if (blocks.Count < options.MinimumBlocks)
            return ChangeEstimate.Refuse(range.Taxon, method, "%", n, SizeWords.TooFewBlocks(blocks.Count, options.MinimumBlocks, options.BlockSquares * frame.SideKm));
        if (blocks.Variance(times => LogRatio(Sum(times, before), Sum(times, after))) is not { } drawn)
            return ChangeEstimate.Refuse(range.Taxon, method, "%", n, SizeWords.NoDraws);

        var half = frame.Student(blocks.Count) * Math.Sqrt(Math.Max(drawn, IndependentVariance(tally)));
        var value = PercentChange.Of(tally.Before, tally.After);
        return ChangeEstimate.Of(range.Taxon, method, "%", n, value, PercentChange.Around(value, LogRatio(tally.Before, tally.After), half));
    }

    /// <summary>ln of the ratio of two counts, a half added to each so that a count of 0 has one too.</summary>
    internal static double LogRatio(double before, double after) => Math.Log((after + 0.5) / (before + 0.5));

    /// <summary>
    /// Variance of the log ratio of paired counts if squares were independent: the least that it can be, and above 0 even where no
    /// square was gained or lost (docs/methods/range-size.md, eq. 3; Nam and Blackwelder 2002).
    /// </summary>
    internal static double IndependentVariance(Tally tally) => (tally.Gained + tally.Lost + 1) / ((tally.Before + 0.5) * (tally.After + 0.5));

    private static (HeldBlocks Blocks, int[] Before, int[] After) ByBlock(SurveyFrame frame, TaxonRange range, bool[]? among)
    {
        var squares = among is null ? range.Squares : Array.FindAll(range.Squares, square => among[square]);
        var blocks = HeldBlocks.Of(frame.Tiles, squares);
        var (before, after) = (new int[blocks.Count], new int[blocks.Count]);
        for (var i = 0; i < range.Squares.Length; i++)
        {
            if (among is not null && !among[range.Squares[i]])
                continue;
            var block = blocks.Of(range.Squares[i]);
            before[block] += range.Before[i] > 0 ? 1 : 0;
            after[block] += range.After[i] > 0 ? 1 : 0;
        }

        return (blocks, before, after);
    }

    private static int Sum(ReadOnlySpan<byte> times, int[] counts)
    {
        var sum = 0;
        for (var block = 0; block < times.Length; block++)
            sum += times[block] * counts[block];
        return sum;
    }
}

/// <summary>Squares of a taxon gained, lost and kept from one period to another.</summary>
internal readonly record struct Tally(int Gained, int Lost, int Kept)
{
    /// <summary>Squares of the earlier period.</summary>
    public int Before => Lost + Kept;

    /// <summary>Squares of the later period.</summary>
    public int After => Gained + Kept;

    /// <summary>Counts the squares of a taxon, or those of them that are marked.</summary>
    public static Tally Of(TaxonRange range, bool[]? among)
    {
        var (gained, lost, kept) = (0, 0, 0);
        for (var i = 0; i < range.Squares.Length; i++)
        {
            if (among is not null && !among[range.Squares[i]])
                continue;
            gained += range.Before[i] == 0 ? 1 : 0;
            lost += range.After[i] == 0 ? 1 : 0;
            kept += range.Before[i] > 0 && range.After[i] > 0 ? 1 : 0;
        }

        return new(gained, lost, kept);
    }
}
