namespace RangeMap.Change;

/// <summary>
/// Area of occupancy at 2 km, scaled down where the squares are coarser (docs/methods/range-size.md, eq. 7 and 8): the area falls with the cell by a power that the squares
/// themselves show between their own size and twice that. The method of the IUCN Standards and Petitions Committee, Guidelines for Using the Red List Categories and
/// Criteria, section 4.10 (the formula from memory, not verified against the text; both ends of its example are tested).
/// </summary>
public static class OccupancyArea
{
    /// <summary>Side of the reference cell, km.</summary>
    public const double ReferenceKm = 2;

    /// <summary>Square kilometres at the reference cell.</summary>
    /// <param name="areaKm2">Area occupied in cells of a coarser size.</param>
    /// <param name="sideKm">Their side; at least 2 km.</param>
    /// <param name="exponent">How fast the area falls with the cell: 0, not at all, to 1, as fast as the cell.</param>
    public static double Scaled(double areaKm2, double sideKm, double exponent) => areaKm2 * Math.Pow(ReferenceKm * ReferenceKm / (sideKm * sideKm), exponent);

    /// <summary>The exponent between two sizes of cell, held between 0 and 1.</summary>
    public static double Exponent(double areaFine, double sideFine, double areaCoarse, double sideCoarse) =>
        areaFine > 0 && areaCoarse > 0 ? Math.Clamp(Math.Log(areaCoarse / areaFine) / (2 * Math.Log(sideCoarse / sideFine)), 0, 1) : 0;

    internal static ChangeEstimate Measure(TaxonSquares taxon)
    {
        const string method = ChangeMethods.OccupancyArea, unit = "%";
        var n = taxon.Before.Length + taxon.After.Length;
        if (taxon.TooFew() is { } reason)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, reason);
        var (before, after) = (AreaOf(taxon, taxon.Before), AreaOf(taxon, taxon.After));
        // The exponent moves both areas alike to first order, so the blocks' squares carry the interval.
        if (RatioInterval.OfTotals(SquaresByBlock(taxon, taxon.Before), SquaresByBlock(taxon, taxon.After)) is not { } counted || !(before > 0))
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, "All squares lie close together, so the area has no interval.");
        var shift = after / before / Math.Max(1 + counted.Percent / 100, double.Epsilon);
        var percent = 100 * (after / before - 1);
        var interval = taxon.After.Length == 0 ? counted.Interval : new Interval(Moved(counted.Interval.Low, shift), Moved(counted.Interval.High, shift));
        return ChangeEstimate.Of(taxon.Taxon, method, unit, n, percent, interval) with
        {
            Before = before,
            After = after,
            Note = taxon.Options.SquareSideKm > ReferenceKm
                ? FormattableString.Invariant($"Square kilometres at {ReferenceKm} km, scaled down from squares of {taxon.Options.SquareSideKm:0.##} km; more recording finds more squares.")
                : "Square kilometres of occupied squares of 2 km; more recording finds more squares.",
        };
    }

    private static double Moved(double percent, double shift) => 100 * ((1 + percent / 100) * shift - 1);

    private static double AreaOf(TaxonSquares taxon, int[] squares)
    {
        var side = taxon.Options.SquareSideKm;
        var area = squares.Length * side * side;
        if (side <= ReferenceKm)
            return area;
        var twice = squares.Select(square => taxon.Squares[square].Centre).Select(c => ((long)Math.Floor(c.X / (2 * side)), (long)Math.Floor(c.Y / (2 * side)))).Distinct().Count();
        return Scaled(area, side, Exponent(area, side, twice * 4 * side * side, 2 * side));
    }

    private static double[] SquaresByBlock(TaxonSquares taxon, int[] squares)
    {
        var blocks = new double[taxon.Blocks.Count];
        foreach (var square in squares)
            blocks[taxon.Blocks.OfSquare[square]]++;
        return blocks;
    }
}
