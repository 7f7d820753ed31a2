namespace RangeMap.Change;

/// <summary>
/// Extent of occurrence: the area of the least convex polygon round the corners of the occupied squares, never less than the area of
/// those squares (docs/methods/range-size.md, eq. 5 and 6).
/// </summary>
public static class ExtentOfOccurrence
{
    /// <summary>The extent of some squares, km²; 0 without any.</summary>
    /// <param name="squares">Squares of one plane.</param>
    public static double Km2(IReadOnlyCollection<SurveySquare> squares) =>
        Math.Max(ConvexHull.Of(squares.SelectMany(CornersOf)).Area, squares.Sum(square => square.AreaKm2));

    /// <summary>The corners of the extent, anticlockwise, without those between two others on a side; empty without squares.</summary>
    /// <param name="squares">Squares of one plane.</param>
    public static IReadOnlyList<PlanePoint> Outline(IEnumerable<SurveySquare> squares) => ConvexHull.Of(squares.SelectMany(CornersOf)).Corners;

    internal static ChangeEstimate Measure(SurveyFrame frame, TaxonRange range)
    {
        var blocks = HeldBlocks.Of(frame.Tiles, range.Squares);
        var (before, after) = (HullByBlock.Of(frame, range, range.Before, blocks), HullByBlock.Of(frame, range, range.After, blocks));
        var (km2Before, km2After) = (before.WholeKm2, after.WholeKm2);
        return Estimate() with { Before = km2Before, After = km2After, Note = SizeWords.Extent(range.CountBefore, range.CountAfter) };

        ChangeEstimate Estimate()
        {
            var (n, least) = (range.Squares.Length, frame.Options.MinimumBlocks);
            if (range.CountBefore < frame.Options.MinimumSquares)
                return Refuse(n, SizeWords.TooFewBefore(range.CountBefore, frame.Options.MinimumSquares));
            if (range.CountAfter == 0)
                return Refuse(n, SizeWords.MissingIn(range.CountBefore));
            if (blocks.Count < least)
                return Refuse(n, SizeWords.TooFewBlocks(blocks.Count, least, frame.Options.BlockSquares * frame.SideKm));
            if (blocks.Variance(times => Math.Log(after.DrawnKm2(times) / before.DrawnKm2(times))) is not { } drawn)
                return Refuse(n, SizeWords.NoDraws);

            var half = frame.Student(blocks.Count) * Math.Sqrt(Math.Max(drawn, before.PlaceVariance(frame.SideKm) + after.PlaceVariance(frame.SideKm)));
            var value = PercentChange.Of(km2Before, km2After);
            return ChangeEstimate.Of(range.Taxon, ChangeMethods.Extent, "%", n, value, PercentChange.Around(value, Math.Log(km2After / km2Before), half));
        }

        ChangeEstimate Refuse(int n, string reason) => ChangeEstimate.Refuse(range.Taxon, ChangeMethods.Extent, "%", n, reason);
    }

    internal static PlanePoint[] CornersOf(SurveySquare square) => [square.SouthWest, square.SouthEast, square.NorthEast, square.NorthWest];
}
