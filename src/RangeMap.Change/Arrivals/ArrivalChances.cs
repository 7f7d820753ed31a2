namespace RangeMap.Change;

/// <summary>
/// When a species arrived in one square, where a visit may miss it: visits before the arrival find nothing, later ones find it with a known
/// chance (docs/methods/arrival-years.md, eq. 8).
/// </summary>
/// <param name="Years">Chance of an arrival in each year given the visits, years ascending.</param>
/// <param name="Never">Chance that it has not arrived in any of them.</param>
/// <param name="Likelihood">Chance of the visits as they were, over all arrivals that the prior allows.</param>
public sealed record ArrivalChances(IReadOnlyList<(int Year, double Chance)> Years, double Never, double Likelihood)
{
    /// <summary>Weighs what was thought before by what the visits found.</summary>
    /// <param name="prior">Chance of an arrival in each year before any visit, each at least 0; with <paramref name="never"/> they add up to 1.</param>
    /// <param name="never">Chance of no arrival in any of those years.</param>
    /// <param name="visits">Years of visits, and whether each found the species.</param>
    /// <param name="detection">Chance that a visit finds what is there, in (0, 1).</param>
    /// <returns>Null where the visits are impossible under the prior: found before any year of arrival that it allows.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A chance lies outside its range.</exception>
    public static ArrivalChances? Of(IReadOnlyCollection<(int Year, double Chance)> prior, double never, IReadOnlyCollection<(int Year, bool Found)> visits, double detection)
    {
        if (!(detection > 0 && detection < 1))
            throw new ArgumentOutOfRangeException(nameof(detection), detection, "The chance that a visit finds the species must lie between 0 and 1.");
        if (!(never >= 0) || prior.Any(year => !(year.Chance >= 0)) || Math.Abs(prior.Sum(year => year.Chance) + never - 1) > 1e-9)
            throw new ArgumentOutOfRangeException(nameof(prior), "The chances of all years and of none must be at least 0 and add up to 1.");

        var weighed = prior.OrderBy(year => year.Year).Select(year => (year.Year, Chance: year.Chance * Visits(visits, year.Year, detection))).ToList();
        var absent = visits.Any(visit => visit.Found) ? 0 : never;
        var likelihood = weighed.Sum(year => year.Chance) + absent;
        return likelihood > 0
            ? new([.. weighed.Select(year => (year.Year, year.Chance / likelihood))], absent / likelihood, likelihood)
            : null;
    }

    /// <summary>Chance that it had arrived by the end of a year.</summary>
    public double PresentBy(int year) => Years.Where(arrival => arrival.Year <= year).Sum(arrival => arrival.Chance);

    /// <summary>Visits without a find after which a species that was present would have been found with the wanted confidence: ln(1 - confidence) / ln(1 - p).</summary>
    /// <param name="detection">Chance p that a visit finds what is there, in (0, 1).</param>
    /// <param name="confidence">In (0, 1), usually 0.95.</param>
    /// <returns>Not a whole number: round it up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A chance lies outside its range.</exception>
    public static double VisitsForAbsence(double detection, double confidence = 0.95) =>
        detection is > 0 and < 1 && confidence is > 0 and < 1
            ? Math.Log(1 - confidence) / Math.Log(1 - detection)
            : throw new ArgumentOutOfRangeException(nameof(detection), detection, "The chance of a find and the confidence must lie between 0 and 1.");

    private static double Visits(IReadOnlyCollection<(int Year, bool Found)> visits, int arrival, double detection)
    {
        var chance = 1.0;
        foreach (var (year, found) in visits)
            chance *= year < arrival ? (found ? 0 : 1) : found ? detection : 1 - detection;
        return chance;
    }
}
