namespace RangeMap.Change;

/// <summary>
/// Extent by alpha-hull: the Delaunay triangles of the corners of the occupied squares, without those that have an edge longer than alpha
/// times the mean edge of the earlier period; the later period is cut at the same length (docs/methods/range-size.md, eq. 13). Empty land
/// inside a scattered range does not count, as it does in the convex hull.
/// </summary>
/// <remarks>Takes some tens of milliseconds a taxon, so it stands apart from <see cref="RangeSizeChange.Measure"/>.</remarks>
public static class AlphaHull
{
    /// <summary>Area, km², of an alpha-hull; 0 without squares.</summary>
    /// <param name="squares">Squares of one plane.</param>
    /// <param name="cutKm">Longest edge that is kept, km.</param>
    public static double Km2(IEnumerable<SurveySquare> squares, double cutKm) => Triangulation.Of(squares).Triangles.Sum(triangle => Triangulation.Km2(triangle, cutKm));

    /// <summary>Measures the change of one taxon from the first to the last period, in percent, with its interval.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="taxon">Index of the taxon.</param>
    /// <param name="options">How.</param>
    /// <param name="alpha">Times the mean edge beyond which a triangle is left out; more than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option, alpha or the taxon lies outside its range.</exception>
    public static ChangeEstimate Measure(GroupSurvey survey, int taxon, ChangeOptions options, double alpha = 2)
    {
        options.ThrowIfOutOfRange();
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)taxon, (uint)survey.Taxa, nameof(taxon));
        if (!(alpha > 1) || !double.IsFinite(alpha))
            throw new ArgumentOutOfRangeException(nameof(alpha), alpha, "Alpha must be more than 1.");
        var (frame, fault) = SurveyFrame.For(survey, options);
        if (frame is null)
            return ChangeEstimate.Refuse(taxon, ChangeMethods.ExtentAlpha, "%", 0, fault!);
        var range = TaxonRange.Of(taxon, frame.From.Found.OfTaxon(taxon), frame.To.Found.OfTaxon(taxon));
        return Measure(frame, range, alpha);
    }

    private static ChangeEstimate Measure(SurveyFrame frame, TaxonRange range, double alpha)
    {
        var options = frame.Options;
        var blocks = HeldBlocks.Of(frame.Tiles, range.Squares);
        if (range.CountBefore < options.MinimumSquares)
            return Refuse(range.Squares.Length == 0 ? SizeWords.NotFound : SizeWords.TooFewBefore(range.CountBefore, options.MinimumSquares));
        if (range.CountAfter == 0)
            return Refuse(SizeWords.MissingIn(range.CountBefore));
        if (blocks.Count < options.MinimumBlocks)
            return Refuse(SizeWords.TooFewBlocks(blocks.Count, options.MinimumBlocks, options.BlockSquares * frame.SideKm));

        var (first, last) = (Triangulation.Of(SquaresOf(frame, range, range.Before)), Triangulation.Of(SquaresOf(frame, range, range.After)));
        var cutKm = alpha * first.MeanEdgeKm;
        var blockOf = BlockOfCorners(frame, range, blocks);
        var (before, after) = (ByBlock(first, cutKm, blockOf, blocks.Count), ByBlock(last, cutKm, blockOf, blocks.Count));
        if (blocks.Variance(times => Math.Log(Sum(times, after) / Sum(times, before))) is not { } drawn)
            return Refuse(SizeWords.NoDraws);

        var (km2Before, km2After) = (before.Sum(), after.Sum());
        var half = frame.Student(blocks.Count) * Math.Sqrt(Math.Max(drawn, SquareCounts.IndependentVariance(Tally.Of(range, null))));
        var value = PercentChange.Of(km2Before, km2After);
        return ChangeEstimate.Of(range.Taxon, ChangeMethods.ExtentAlpha, "%", range.Squares.Length, value, PercentChange.Around(value, Math.Log(km2After / km2Before), half)) with
        {
            Before = km2Before,
            After = km2After,
            Note = SizeWords.AlphaHull(alpha, cutKm),
        };

        ChangeEstimate Refuse(string reason) => ChangeEstimate.Refuse(range.Taxon, ChangeMethods.ExtentAlpha, "%", range.Squares.Length, reason);
    }

    private static IEnumerable<SurveySquare> SquaresOf(SurveyFrame frame, TaxonRange range, int[] records) =>
        range.Squares.Where((_, i) => records[i] > 0).Select(square => frame.Survey.Squares[square]);

    // A corner that several squares share goes with the first of them.
    private static Dictionary<PlanePoint, int> BlockOfCorners(SurveyFrame frame, TaxonRange range, HeldBlocks blocks)
    {
        var blockOf = new Dictionary<PlanePoint, int>();
        foreach (var square in range.Squares)
        {
            foreach (var corner in ExtentOfOccurrence.CornersOf(frame.Survey.Squares[square]))
                blockOf.TryAdd(corner, blocks.Of(square));
        }

        return blockOf;
    }

    // Triangles are short beside a block, so a draw of blocks has the sum of its triangles; a third of each goes with each of its corners.
    private static double[] ByBlock(Triangulation joined, double cutKm, Dictionary<PlanePoint, int> blockOf, int blocks)
    {
        var km2 = new double[blocks];
        foreach (var triangle in joined.Triangles)
        {
            var third = Triangulation.Km2(triangle, cutKm) / 3;
            foreach (var corner in triangle.AsSpan(0, 3))
                km2[blockOf[new(corner.X, corner.Y)]] += third;
        }

        return km2;
    }

    private static double Sum(ReadOnlySpan<byte> times, double[] km2)
    {
        var sum = 0.0;
        for (var block = 0; block < times.Length; block++)
            sum += times[block] * km2[block];
        return sum;
    }
}
