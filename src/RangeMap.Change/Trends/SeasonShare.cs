namespace RangeMap.Change;

/// <summary>The share of squares occupied in one period, as an occupancy model has it.</summary>
/// <param name="Psi">The share, between 0 and 1.</param>
/// <param name="Error">Its standard error.</param>
/// <param name="Detection">Mean over the squares of the chance that the period's visits find the taxon where it is.</param>
internal readonly record struct SeasonShare(double Psi, double Error, double Detection)
{
    /// <summary>95 % interval, symmetrical on the logit scale.</summary>
    internal Interval Interval
    {
        get
        {
            double logit = OccupancyParameters.Logit(Psi), half = SharesOfVisits.Z * Error / (Psi * (1 - Psi));
            return new(OccupancyParameters.Logistic(logit - half), OccupancyParameters.Logistic(logit + half));
        }
    }

    /// <summary>True where the share has run to 1, or could be nearly anything.</summary>
    internal bool Runs(double allOccupied, double widest) => !(Psi < allOccupied) || !(Interval.High - Interval.Low < widest);

    /// <summary>The two shares of a model of both periods, with their correlation.</summary>
    internal static (SeasonShare Before, SeasonShare After, double Correlation, string Note) OfBoth(OccupancyFit fit, OccupancySites sites)
    {
        var seasons = fit.Occupancy();
        var (before, after) = (Of(fit, seasons[0], sites, 0), Of(fit, seasons[1], sites, 1));
        var correlation = fit.Covariance(seasons[0].Slopes, seasons[1].Slopes) / (before.Error * after.Error);
        return (before, after, Math.Clamp(correlation, -1, 1), TrendWords.OccupancyNote(
            fit.Chance(fit.Parameters.Detection(0)),
            fit.Chance(fit.Parameters.Detection(1)),
            fit.Chance(OccupancyParameters.Extinction(0)),
            fit.Chance(OccupancyParameters.Colonisation(0))));
    }

    /// <summary>The shares of two models of one period each, taken as independent, which makes the interval of the difference wide.</summary>
    internal static (SeasonShare Before, SeasonShare After, double Correlation, string Note) OfEach(
        OccupancyFit before, OccupancySites sitesBefore, OccupancyFit after, OccupancySites sitesAfter) => (
        Of(before, before.Occupancy()[0], sitesBefore, 0),
        Of(after, after.Occupancy()[0], sitesAfter, 0),
        0,
        TrendWords.OccupancyOfEachNote(before.Chance(before.Parameters.Detection(0)), after.Chance(after.Parameters.Detection(0))));

    private static SeasonShare Of(OccupancyFit fit, (double Psi, double[] Slopes) season, OccupancySites sites, int number) =>
        new(season.Psi, Math.Sqrt(fit.Covariance(season.Slopes, season.Slopes)), fit.MeanDetection(sites, number));
}
