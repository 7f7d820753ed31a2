namespace RangeMap.Change;

/// <summary>
/// Share of visits that noted the taxon, and its difference between two periods in percentage points, over the squares visited in both
/// (docs/methods/reporting-rate.md). Visits to one square are alike, so the number of visits is cut by the design effect of squares.
/// </summary>
internal static class ReportingRate
{
    private const string Unit = "percentage points";

    internal static ChangeEstimate Of(SharedVisits visits, int taxon, TrendOptions options)
    {
        var with = visits.With(taxon);
        if (visits.Squares < options.LeastSquaresVisited)
            return Refuse(taxon, visits.Squares, TrendWords.NotEnough("squares visited in both periods", visits.Squares, options.LeastSquaresVisited));
        if (with.Length < options.LeastFinds)
            return Refuse(taxon, visits.Squares, TrendWords.NotEnough("visits with the taxon", with.Length, options.LeastFinds));

        var finds = new int[2 * visits.Squares];
        foreach (var visit in with)
            finds[2 * visits.All[visit].Square + visits.All[visit].Season]++;
        return Estimate(taxon, ClusteredShares.Of(finds, visits.VisitsTo));
    }

    private static ChangeEstimate Estimate(int taxon, ClusteredShares shares)
    {
        var (before, after) = (shares.Before, shares.After);
        var interval = SharesOfVisits.OfDifference(before.Share, before.Interval, after.Share, after.Interval, shares.Correlation);
        return ChangeEstimate.Of(taxon, ChangeMethods.ReportingRate, Unit, shares.Squares, 100 * (after.Share - before.Share), new(100 * interval.Low, 100 * interval.High)) with
        {
            Before = 100 * before.Share,
            After = 100 * after.Share,
            P = SharesOfVisits.PValue(after.Share - before.Share, interval),
            Note = TrendWords.ReportingRateNote(before, after),
        };
    }

    private static ChangeEstimate Refuse(int taxon, int squares, string reason) => ChangeEstimate.Refuse(taxon, ChangeMethods.ReportingRate, Unit, squares, reason);
}
