namespace RangeMap.Change;

/// <summary>
/// Area of occupancy in squares of 2 km, scaled down from coarser squares where those are what there is
/// (docs/methods/range-size.md, eq. 7 to 9).
/// </summary>
public static class AreaOfOccupancy
{
    private const double ReferenceKm2 = OccupancyCells.ReferenceKm * OccupancyCells.ReferenceKm;

    /// <summary>C, the slope of ln area on ln cell area between two scales; 0 where every coarse cell is full, 1 where each holds one square.</summary>
    /// <param name="fineKm">Side of the finer cells, km.</param>
    /// <param name="fineCells">Occupied cells of that side; more than 0.</param>
    /// <param name="coarseKm">Side of the coarser cells, more than <paramref name="fineKm"/>.</param>
    /// <param name="coarseCells">Occupied cells of that side; more than 0.</param>
    /// <returns>Clamped to [0, 1], outside which no set of nested cells can lie.</returns>
    public static double Slope(double fineKm, double fineCells, double coarseKm, double coarseCells) =>
        Math.Clamp(1 + Math.Log(coarseCells / fineCells) / (2 * Math.Log(coarseKm / fineKm)), 0, 1);

    /// <summary>The area, km², that cells of 2 km would have: area · (4 / cell area)^C.</summary>
    /// <param name="cellKm">Side of the cells that were counted, km.</param>
    /// <param name="cells">Occupied cells.</param>
    /// <param name="slope">C, in [0, 1].</param>
    public static double At2Km(double cellKm, double cells, double slope) => cells * cellKm * cellKm * Math.Pow(ReferenceKm2 / (cellKm * cellKm), slope);

    /// <summary>The area, km², at 2 km from counts at several scales: C comes from the two finest.</summary>
    /// <param name="counts">Side in km and number of occupied cells; at least two different sides, the cells of one nested in those of the other.</param>
    /// <returns>0 where nothing is occupied; the plain count where its cells are of 2 km.</returns>
    /// <exception cref="ArgumentException">Fewer than two sides, and none of 2 km.</exception>
    public static double At2Km(IEnumerable<(double SideKm, double Cells)> counts)
    {
        var sorted = counts.OrderBy(count => count.SideKm).ToList();
        if (sorted.Find(count => count.SideKm == OccupancyCells.ReferenceKm) is { SideKm: > 0 } counted)
            return counted.Cells * ReferenceKm2;
        if (sorted.Count < 2 || !(sorted[1].SideKm > sorted[0].SideKm))
            throw new ArgumentException("Scaling needs counts at two different scales.", nameof(counts));
        var (fine, coarse) = (sorted[0], sorted[1]);
        return fine.Cells > 0 ? At2Km(fine.SideKm, fine.Cells, Slope(fine.SideKm, fine.Cells, coarse.SideKm, coarse.Cells)) : 0;
    }

    internal static ChangeEstimate Measure(SurveyFrame frame, TaxonRange range)
    {
        var blocks = HeldBlocks.Of(frame.Tiles, range.Squares);
        var (before, after) = (OccupancyByBlock.Of(frame, range, range.Before, blocks), OccupancyByBlock.Of(frame, range, range.After, blocks));
        var (whole, n, options) = (Whole(blocks.Count), range.Squares.Length, frame.Options);
        var ((km2Before, c1), (km2After, c2)) = (before.Km2(whole, 0), after.Km2(whole, 0));
        var note = frame.Cells.Coarser ? SizeWords.Occupancy(frame.SideKm, c1, c2) : SizeWords.OccupancyCounted;
        return Estimate() with { Before = km2Before, After = km2After, Note = note };

        ChangeEstimate Estimate()
        {
            if (range.CountBefore < options.MinimumSquares)
                return Refuse(SizeWords.TooFewBefore(range.CountBefore, options.MinimumSquares));
            if (blocks.Count < options.MinimumBlocks)
                return Refuse(SizeWords.TooFewBlocks(blocks.Count, options.MinimumBlocks, options.BlockSquares * frame.SideKm));
            // Half a cell is added to each, as for counts of squares, so that a draw without any has a logarithm.
            if (blocks.Variance(times => Math.Log(after.Km2(times, 0.5).Km2 / before.Km2(times, 0.5).Km2)) is not { } drawn)
                return Refuse(SizeWords.NoDraws);

            var half = frame.Student(blocks.Count) * Math.Sqrt(Math.Max(drawn, SquareCounts.IndependentVariance(Tally.Of(range, null))));
            var (value, log) = (PercentChange.Of(km2Before, km2After), Math.Log(after.Km2(whole, 0.5).Km2 / before.Km2(whole, 0.5).Km2));
            return ChangeEstimate.Of(range.Taxon, ChangeMethods.OccupancyArea, "%", n, value, PercentChange.Around(value, log, half));
        }

        ChangeEstimate Refuse(string reason) => ChangeEstimate.Refuse(range.Taxon, ChangeMethods.OccupancyArea, "%", n, reason);
    }

    private static byte[] Whole(int blocks)
    {
        var once = new byte[blocks];
        once.AsSpan().Fill(1);
        return once;
    }
}
