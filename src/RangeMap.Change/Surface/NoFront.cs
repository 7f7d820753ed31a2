using System.Globalization;

namespace RangeMap.Change;

/// <summary>
/// Tells a species that was there all along from one that arrives. A model of arrivals follows both, as chance finds of a resident come late here and early there; what it then
/// says of a front means nothing (docs/methods/arrival-surface.md, refused).
/// </summary>
internal static class NoFront
{
    // A front that scatters as widely as a quarter of what was watched cannot be told from none; in short series five years of scatter are still one.
    private const double MostScatterShare = 0.25, LeastScatterYears = 5;

    // Share of the reached squares that may have been reached before the first visits.
    private const double MostBefore = 2.0 / 3;

    // Difference of log-likelihoods, less the numbers used: from here on the visits are over a thousand times likelier with arrivals.
    private const double LeastGain = 7;

    /// <summary>Scatter of single squares round the surface from which on there is no front, years.</summary>
    /// <param name="span">Number of years with visits.</param>
    public static double MostScatterYears(int span) => Math.Max(LeastScatterYears, MostScatterShare * span);

    /// <summary>Why there is no front to follow; null where there is one.</summary>
    /// <param name="rounds">The fitted rounds.</param>
    /// <param name="first">Year of the first visits.</param>
    /// <param name="last">Year of the last ones.</param>
    public static string? Of(ArrivalRounds rounds, int first, int last)
    {
        var span = last - first + 1;
        var most = MostScatterYears(span);
        if (rounds.ScatterYears > most)
            return string.Create(CultureInfo.InvariantCulture, $"No front can be seen: arrivals in neighbouring squares would lie more than {most:0} years apart (standard deviation), in {span} years of visits. A species that was there before the records begin looks like this.");
        var (before, reached) = (rounds.ReachedBefore(first), rounds.ReachedBefore(last + 1));
        if (before > MostBefore * reached)
            return string.Create(CultureInfo.InvariantCulture, $"Most of the range was reached before the records begin: about {before:0} of {reached:0} squares before {first}. What arrived since is too little to follow a front.");
        return rounds.GainOverResident() < LeastGain
            ? $"No front can be seen: the visits are hardly likelier with arrivals than if the species had been there since before {first.ToString(CultureInfo.InvariantCulture)}."
            : null;
    }
}
