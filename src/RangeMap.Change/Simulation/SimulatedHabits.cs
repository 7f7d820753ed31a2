namespace RangeMap.Change;

/// <summary>How the recorders of a <see cref="SimulatedSurvey"/> go about in one period.</summary>
public sealed record SimulatedHabits
{
    private const double ShortEffort = 0.45;

    /// <summary>Mean number of visits to a square that recorders go to, before empty lists fall away; 0 or more.</summary>
    public double Visits { get; init; } = 8;

    /// <summary>Chance that a square is gone to at all, 0 to 1.</summary>
    public double Coverage { get; init; } = 0.9;

    /// <summary>Share of visits from which one taxon alone is noted, any one of those seen; 0 to 1.</summary>
    public double Notes { get; init; } = 0.15;

    /// <summary>Share of visits that are thorough; the rest are short, with 45 % of the chance to find each taxon. 0 to 1, with <see cref="Notes"/> at most 1.</summary>
    public double Thorough { get; init; } = 0.35;

    /// <summary>A number of visits with the mean given: twice the mean many tries of a half, with the fraction by chance.</summary>
    internal static int Number(double mean, ref Pcg chance)
    {
        var number = chance.NextChance(2 * mean - Math.Floor(2 * mean)) && chance.NextChance(0.5) ? 1 : 0;
        for (var tries = (int)Math.Floor(2 * mean); tries > 0; tries--)
            number += chance.NextChance(0.5) ? 1 : 0;
        return number;
    }

    /// <summary>What a visit notes.</summary>
    internal int[] List(float[][] ranges, double[] ease, int square, ref Pcg chance)
    {
        var kind = chance.NextUnit();
        var effort = kind >= 1 - Thorough ? 1 : ShortEffort;
        var seen = new List<int>();
        for (var taxon = 0; taxon < ease.Length; taxon++)
        {
            if (ranges[taxon][square] > 0 && chance.NextChance(effort * ease[taxon] * ranges[taxon][square]))
                seen.Add(taxon);
        }

        return kind < Notes && seen.Count > 1 ? [seen[chance.NextIndex(seen.Count)]] : [.. seen];
    }
}
