namespace RangeMap.Change;

/// <summary>
/// Difference in the share of squares occupied between two periods, by an occupancy-detection model of both (docs/methods/occupancy.md;
/// MacKenzie and others 2002 and 2003). Each period counts as one season, each visit as one look, its chance of a find growing with the
/// length of its list.
/// </summary>
internal sealed class Occupancy(SharedVisits shared, TrendOptions options)
{
    private const string Unit = "percentage points";

    // Half a square on either side of each step between the periods; without it a taxon that never moved has no finite logit.
    private const double Prior = 1;

    // Beyond these the likelihood is flat and occupancy not known.
    private const double AllOccupied = 0.995;
    private const double WidestShare = 0.9;

    private readonly VisitTally _tally = new(shared);

    internal ChangeEstimate Of(int taxon)
    {
        if (shared.Squares < options.LeastSquaresVisited)
            return Refuse(taxon, TrendWords.NotEnough("squares visited in both periods", shared.Squares, options.LeastSquaresVisited));
        if (_tally.LeastRepeated is var repeated && repeated < options.LeastSquaresRepeated)
            return Refuse(taxon, TrendWords.NotEnough("squares visited twice or more in a period", repeated, options.LeastSquaresRepeated));

        var (sites, before, after) = _tally.SitesOf(taxon);
        if (Math.Min(before, after) < options.LeastSquaresFound)
            return Refuse(taxon, TrendWords.NotEnoughSquaresFound(before, after, options.LeastSquaresFound));
        if (OccupancyFit.To(sites, Prior) is { } both)
            return Estimate(taxon, SeasonShare.OfBoth(both, sites));

        // The two seasons by themselves need fewer parameters.
        return OccupancyFit.To(sites.Season(0), Prior) is { } first && OccupancyFit.To(sites.Season(1), Prior) is { } second
            ? Estimate(taxon, SeasonShare.OfEach(first, sites.Season(0), second, sites.Season(1)))
            : Refuse(taxon, TrendWords.NotSettled);
    }

    private ChangeEstimate Estimate(int taxon, (SeasonShare Before, SeasonShare After, double Correlation, string Note) shares)
    {
        var (before, after, correlation, note) = shares;
        if (Math.Min(before.Detection, after.Detection) is var detection && detection < options.LeastDetection)
            return Refuse(taxon, TrendWords.SeldomDetected(detection, options.LeastDetection));
        if (before.Runs(AllOccupied, WidestShare) || after.Runs(AllOccupied, WidestShare))
            return Refuse(taxon, TrendWords.OccupancyRuns);

        var interval = SharesOfVisits.OfDifference(before.Psi, before.Interval, after.Psi, after.Interval, correlation);
        return ChangeEstimate.Of(taxon, ChangeMethods.Occupancy, Unit, shared.Squares, 100 * (after.Psi - before.Psi), new(100 * interval.Low, 100 * interval.High)) with
        {
            Before = 100 * before.Psi,
            After = 100 * after.Psi,
            P = SharesOfVisits.PValue(after.Psi - before.Psi, interval),
            Note = note,
        };
    }

    private ChangeEstimate Refuse(int taxon, string reason) => ChangeEstimate.Refuse(taxon, ChangeMethods.Occupancy, Unit, shared.Squares, reason);
}
