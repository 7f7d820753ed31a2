namespace RangeMap.Change;

/// <summary>Occupied squares in two periods, with and without control of effort (docs/methods/range-size.md, eq. 1 to 5).</summary>
internal static class SquareCounts
{
    private const string Percent = "%";

    /// <summary>All squares, whatever the effort.</summary>
    public static ChangeEstimate All(TaxonSquares taxon) =>
        Measure(taxon, ChangeMethods.Squares, null, "squares", "Counts every square; more recording finds more squares.");

    /// <summary>Squares that were surveyed in both periods.</summary>
    public static ChangeEstimate Both(TaxonSquares taxon) =>
        Measure(taxon, ChangeMethods.SquaresBoth, taxon.Prepared.SurveyedInBoth, "squares surveyed in both periods", "Counts only squares surveyed in both periods, however little.");

    /// <summary>Squares that were well surveyed in both periods.</summary>
    public static ChangeEstimate WellSurveyed(TaxonSquares taxon) =>
        Measure(
            taxon, ChangeMethods.SquaresSurveyed, taxon.Prepared.WellSurveyedInBoth, "squares well surveyed in both periods",
            "Counts only squares well surveyed in both periods; it says nothing of the others.");

    private static ChangeEstimate Measure(TaxonSquares taxon, string method, bool[]? counted, string what, string note)
    {
        var (before, after) = (Totals(taxon, taxon.Before, counted, out var n1), Totals(taxon, taxon.After, counted, out var n2));
        var available = counted?.Count(c => c) ?? taxon.Squares.Count;
        if (taxon.TooFew() is { } reason)
            return ChangeEstimate.Refuse(taxon.Taxon, method, Percent, available, reason);
        if (n1 == 0 || n1 + n2 < taxon.Options.LeastSquares || RatioInterval.OfTotals(before, after) is not { } change)
        {
            return ChangeEstimate.Refuse(
                taxon.Taxon, method, Percent, available, $"Not enough squares: among {available} {what} the taxon was in {n1} and then {n2}, of at least {taxon.Options.LeastSquares} together.");
        }

        return ChangeEstimate.Of(taxon.Taxon, method, Percent, available, change.Percent, change.Interval) with { Before = n1, After = n2, Note = note };
    }

    private static double[] Totals(TaxonSquares taxon, int[] squares, bool[]? counted, out int total)
    {
        var blocks = new double[taxon.Blocks.Count];
        total = 0;
        foreach (var square in squares)
        {
            if (counted is not null && !counted[square])
                continue;
            blocks[taxon.Blocks.OfSquare[square]]++;
            total++;
        }

        return blocks;
    }
}
