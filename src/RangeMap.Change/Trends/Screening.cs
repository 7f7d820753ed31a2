namespace RangeMap.Change;

/// <summary>One taxon of a <see cref="Screening"/>.</summary>
/// <param name="Estimate">Its estimate.</param>
/// <param name="Adjusted">Share of false alarms to expect among the taxa at least as striking as this one (Benjamini and Hochberg 1995), 0 to 1.</param>
/// <param name="StandsOut">True where that share is within the rate asked for.</param>
public sealed record ScreenedTaxon(ChangeEstimate Estimate, double Adjusted, bool StandsOut);

/// <summary>
/// All taxa of a group by one method, the most striking first. Among many taxa some will seem to change by chance alone, so each is
/// judged with all the others in view.
/// </summary>
public sealed record Screening
{
    private Screening(string method, double rate, IReadOnlyList<ScreenedTaxon> taxa) => (Method, Rate, Taxa) = (method, rate, taxa);

    /// <summary>The method, one of <see cref="ChangeMethods"/>.</summary>
    public string Method { get; }

    /// <summary>Greatest share of false alarms accepted among those that stand out.</summary>
    public double Rate { get; }

    /// <summary>Taxa with a p-value by the method, by rising p-value and then by index.</summary>
    public IReadOnlyList<ScreenedTaxon> Taxa { get; }

    /// <summary>What to bear in mind when reading the list.</summary>
    public string Caution => ScreeningWords.Caution(Method, Taxa.Count, Taxa.Count(taxon => taxon.Estimate.P < 0.05), Taxa.Count(taxon => taxon.StandsOut), Rate);

    /// <summary>Screens one method.</summary>
    /// <param name="estimates">Estimates of any number of taxa and methods.</param>
    /// <param name="method">The method to screen by.</param>
    /// <param name="rate">Greatest share of false alarms accepted, in (0, 1).</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate lies outside its range.</exception>
    public static Screening Of(IEnumerable<ChangeEstimate> estimates, string method, double rate = 0.05)
    {
        if (!(rate > 0 && rate < 1))
            throw new ArgumentOutOfRangeException(nameof(rate), rate, "The rate must lie between 0 and 1, both excluded.");

        ChangeEstimate[] sorted = [.. estimates.Where(estimate => estimate.Method == method && estimate.P is not null).OrderBy(estimate => estimate.P).ThenBy(estimate => estimate.Taxon)];
        var taxa = new ScreenedTaxon[sorted.Length];
        var adjusted = 1.0;
        // From the least striking down: an adjusted value is never above that of a taxon with a greater p-value.
        for (var i = sorted.Length - 1; i >= 0; i--)
        {
            adjusted = Math.Min(adjusted, sorted[i].P!.Value * ((double)sorted.Length / (i + 1)));
            taxa[i] = new(sorted[i], adjusted, adjusted <= rate);
        }

        return new(method, rate, taxa);
    }
}
