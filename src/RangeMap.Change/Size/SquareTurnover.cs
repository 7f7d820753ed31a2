namespace RangeMap.Change;

/// <summary>
/// How much the taxa of one square changed between two periods, or why that cannot be said (docs/methods/range-size.md, eq. 12;
/// Sørensen 1948, Jaccard 1912, Baselga 2010). The lists stand either way.
/// </summary>
/// <param name="Square">Index of the square.</param>
/// <param name="Kept">Taxa found in both periods, ascending; a of them.</param>
/// <param name="Lost">Taxa found in the earlier period only; b of them.</param>
/// <param name="Gained">Taxa found in the later period only; c of them.</param>
public sealed record SquareTurnover(int Square, IReadOnlyList<int> Kept, IReadOnlyList<int> Lost, IReadOnlyList<int> Gained)
{
    /// <summary>Why there are no indices; null where there are.</summary>
    public string? Refused { get; private init; }

    /// <summary>2a / (2a + b + c), 0 (nothing in common) to 1 (the same taxa).</summary>
    public double? Sorensen => Given(2.0 * Kept.Count / (2 * Kept.Count + Lost.Count + Gained.Count));

    /// <summary>a / (a + b + c), 0 to 1.</summary>
    public double? Jaccard => Given((double)Kept.Count / (Kept.Count + Lost.Count + Gained.Count));

    /// <summary>min(b, c) / (a + min(b, c)): the part of 1 - <see cref="Sorensen"/> that comes of taxa in place of others; 0 to 1.</summary>
    public double? Turnover => Given(Replaced == 0 ? 0 : (double)Replaced / (Kept.Count + Replaced));

    /// <summary>1 - <see cref="Sorensen"/> - <see cref="Turnover"/>: the part that comes of one list being the longer; 0 to 1.</summary>
    public double? Nestedness => 1 - Sorensen - Turnover;

    private int Replaced => Math.Min(Lost.Count, Gained.Count);

    /// <summary>Compares the first and the last period of a survey.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="square">One of its squares.</param>
    /// <param name="before">Effort of its first period.</param>
    /// <param name="after">Effort of its last period.</param>
    /// <returns>Lists of taxa, and indices where the square is well surveyed in both periods.</returns>
    public static SquareTurnover Of(GroupSurvey survey, int square, EffortTable before, EffortTable after)
    {
        if (survey.Periods.Count < 2)
            return new(square, [], [], []) { Refused = SizeWords.OnePeriod };
        var first = TaxaOf(survey.Periods[0], square);
        var last = TaxaOf(survey.Periods[^1], square);
        return new(square, [.. first.Intersect(last)], [.. first.Except(last)], [.. last.Except(first)]) { Refused = ReasonAgainst(before[square], after[square]) };
    }

    private static string? ReasonAgainst(SquareEffort before, SquareEffort after) =>
        !before.WellSurveyed ? SizeWords.NotWellSurveyed("earlier", before)
        : !after.WellSurveyed ? SizeWords.NotWellSurveyed("later", after)
        : before.Taxa + after.Taxa == 0 ? SizeWords.NoTaxa
        : null;

    private static int[] TaxaOf(SurveyPeriod period, int square)
    {
        var finds = period.Found.InSquare(square);
        var taxa = new int[finds.Length];
        for (var i = 0; i < taxa.Length; i++)
            taxa[i] = finds[i].Index;
        return taxa;
    }

    private double? Given(double index) => Refused is null ? index : null;
}
