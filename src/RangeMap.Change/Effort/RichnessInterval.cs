namespace RangeMap.Change;

/// <summary>
/// Interval of the number of taxa that lists speak for (docs/methods/expected-species.md, eq. 5 to 7): the variance of Chao2, and the number missed
/// taken as log-normal, so that the interval never falls below what was found. Chao 1987, Biometrics 43:783-791.
/// </summary>
/// <param name="Richness">Taxa found and expected.</param>
/// <param name="Interval">The 95 % interval of <see cref="Richness.Expected"/>; null where there is none.</param>
/// <param name="Refused">Why there is none, as a sentence; null where there is one.</param>
public sealed record RichnessInterval(Richness Richness, Interval? Interval, string? Refused)
{
    /// <summary>Fewest lists of which an estimate is made.</summary>
    public const int LeastLists = 5;

    private const double Normal95 = 1.959964;

    /// <summary>Chao2 with its interval, or the reason why none is given.</summary>
    /// <param name="listsOfTaxa">One number a taxon found, each from 1 to <paramref name="lists"/>.</param>
    /// <param name="lists">m, the number of lists.</param>
    public static RichnessInterval FromLists(ReadOnlySpan<int> listsOfTaxa, int lists)
    {
        var richness = Richness.FromLists(listsOfTaxa, lists);
        if (lists < LeastLists)
            return new(richness, null, FormattableString.Invariant($"Not enough visits: {lists} of at least {LeastLists}."));
        if (listsOfTaxa.IsEmpty)
            return new(richness, null, "Nothing was found on any visit.");
        var missed = richness.Expected - richness.Observed;
        if (missed <= 0)
            return new(richness, null, "Hardly any species was met on one visit only, so the visits speak for none that was missed.");
        var spread = Math.Exp(Normal95 * Math.Sqrt(Math.Log(1 + Variance(listsOfTaxa.Count(1), listsOfTaxa.Count(2), lists, richness.Expected) / (missed * missed))));
        return new(richness, new(richness.Observed + missed / spread, richness.Observed + missed * spread), null);
    }

    /// <summary>Variance of Chao2: eq. 5 where some taxon was met twice, else eq. 6.</summary>
    private static double Variance(double once, double twice, int lists, double expected)
    {
        var a = (lists - 1.0) / lists;
        if (twice == 0)
            return Math.Max(0, a * once * (once - 1) / 2 + a * a * once * (2 * once - 1) * (2 * once - 1) / 4 - a * a * Math.Pow(once, 4) / (4 * expected));
        var ratio = once / twice;
        return twice * (a / 2 * ratio * ratio + a * a * Math.Pow(ratio, 3) + a * a / 4 * Math.Pow(ratio, 4));
    }
}
