namespace RangeMap.Change;

/// <summary>
/// How many taxa a sample held, how many there must be at least, and how complete the sample is: Chao1 from records, Chao2 from
/// lists (docs/methods/effort.md, eq. 1 to 4). Chao 1984 and 1987; coverage by Chao and Jost 2012.
/// </summary>
/// <param name="Observed">S, the number of taxa in the sample.</param>
/// <param name="Expected">Least number of taxa that the sample speaks for; never below <paramref name="Observed"/>.</param>
/// <param name="Coverage">Share, 0 to 1, of all that is there to be met which belongs to a taxon of the sample; 0 for an empty sample.</param>
public readonly record struct Richness(int Observed, double Expected, double Coverage)
{
    /// <summary>S by the number expected, 0 to 1; 0 for an empty sample. It can be low where <see cref="Coverage"/> is high: many rare taxa missing.</summary>
    public double Completeness => Expected > 0 ? Observed / Expected : 0;

    /// <summary>Chao1 and its coverage, from the number of records of each taxon.</summary>
    /// <param name="recordsOfTaxa">One number a taxon of the sample, each at least 1.</param>
    public static Richness FromRecords(ReadOnlySpan<int> recordsOfTaxa)
    {
        long records = 0;
        foreach (var number in recordsOfTaxa)
            records += number;
        return Of(recordsOfTaxa, records, records);
    }

    /// <summary>Chao2 and its coverage, from the number of lists on which each taxon stands.</summary>
    /// <param name="listsOfTaxa">One number a taxon of the sample, each from 1 to <paramref name="lists"/>.</param>
    /// <param name="lists">m, the number of lists.</param>
    public static Richness FromLists(ReadOnlySpan<int> listsOfTaxa, int lists)
    {
        long mentions = 0;
        foreach (var number in listsOfTaxa)
            mentions += number;
        return Of(listsOfTaxa, lists, mentions);
    }

    // n is the size of the sample (records, or lists); total what the counts sum to (records, or mentions on lists).
    private static Richness Of(ReadOnlySpan<int> counts, long n, long total)
    {
        if (counts.IsEmpty || n == 0)
            return new(0, 0, 0);

        double f1 = counts.Count(1), f2 = counts.Count(2);
        var share = (n - 1.0) / n;
        var unseen = f2 > 0 ? share * f1 * f1 / (2 * f2) : share * f1 * (f1 - 1) / 2;
        // Without taxa met twice the last factor is 1, which leaves Turing's 1 - f1/total: a single record covers nothing.
        var factor = f2 > 0 ? (n - 1) * f1 / ((n - 1) * f1 + 2 * f2) : 1;
        return new(counts.Length, counts.Length + unseen, 1 - f1 / total * factor);
    }
}
