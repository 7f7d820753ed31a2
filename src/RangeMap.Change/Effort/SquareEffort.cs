namespace RangeMap.Change;

/// <summary>Effort in one square and period, and what it showed.</summary>
/// <param name="Visits">Visits.</param>
/// <param name="Recorders">Different recorders that are named.</param>
/// <param name="Records">Records, also those that are dated too vaguely to make a visit.</param>
/// <param name="Taxa">Taxa found.</param>
/// <param name="MeanListLength">Taxa a visit; 0 without visits.</param>
/// <param name="MedianListLength">The middle one of the list lengths; 0 without visits.</param>
/// <param name="Chao1">Least number of taxa by records.</param>
/// <param name="Chao2">Least number of taxa by lists.</param>
/// <param name="Coverage">Sample coverage of the lists, 0 to 1.</param>
public readonly record struct SquareEffort(
    int Visits, int Recorders, int Records, int Taxa, double MeanListLength, double MedianListLength, double Chao1, double Chao2, double Coverage)
{
    /// <summary>Taxa found as a share of the least number that lives there by lists; 0 where nothing was found.</summary>
    public double Completeness => Taxa == 0 ? 0 : Math.Min(1, Taxa / Math.Max(Chao2, Taxa));

    /// <summary>True when both thresholds of the options are reached.</summary>
    public bool IsWellSurveyed(ChangeOptions options) => Visits >= options.WellSurveyedVisits && Coverage >= options.WellSurveyedCoverage;

    /// <summary>Measures the effort of a square in a period.</summary>
    public static SquareEffort Of(SurveyPeriod period, int square)
    {
        var visits = period.Visits.To(square);
        var lists = ListCounts(period.Visits, visits);
        var (entries, once, twice) = Tally(lists.Values);
        var (records, recordsOnce, recordsTwice) = Tally(period.Found.InSquare(square));
        var taxa = Math.Max(period.Found.InSquare(square).Length, lists.Count);
        var lengths = Lengths(visits);
        return new(
            visits.Length, RecordersOf(visits), records, taxa, visits.Length == 0 ? 0 : (double)entries / visits.Length, Median(lengths),
            Change.Completeness.Chao1(taxa, records, recordsOnce, recordsTwice),
            Change.Completeness.Chao2(taxa, visits.Length, once, twice),
            Change.Completeness.CoverageOfLists(visits.Length, entries, once, twice));
    }

    private static Dictionary<int, int> ListCounts(VisitTable table, ReadOnlySpan<SurveyVisit> visits)
    {
        var counts = new Dictionary<int, int>();
        foreach (ref readonly var visit in visits)
        {
            foreach (var taxon in table.List(visit))
                counts[taxon] = counts.GetValueOrDefault(taxon) + 1;
        }

        return counts;
    }

    private static (int Total, int Once, int Twice) Tally(IEnumerable<int> counts)
    {
        var (total, once, twice) = (0, 0, 0);
        foreach (var count in counts)
            (total, once, twice) = (total + count, once + (count == 1 ? 1 : 0), twice + (count == 2 ? 1 : 0));
        return (total, once, twice);
    }

    private static (int Total, int Once, int Twice) Tally(ReadOnlySpan<Find> finds)
    {
        var (total, once, twice) = (0, 0, 0);
        foreach (ref readonly var find in finds)
            (total, once, twice) = (total + find.Records, once + (find.Records == 1 ? 1 : 0), twice + (find.Records == 2 ? 1 : 0));
        return (total, once, twice);
    }

    private static int RecordersOf(ReadOnlySpan<SurveyVisit> visits)
    {
        var named = new HashSet<int>();
        foreach (ref readonly var visit in visits)
        {
            if (visit.Recorder != 0)
                named.Add(visit.Recorder);
        }

        return named.Count;
    }

    private static int[] Lengths(ReadOnlySpan<SurveyVisit> visits)
    {
        var lengths = new int[visits.Length];
        for (var i = 0; i < visits.Length; i++)
            lengths[i] = visits[i].ListLength;
        Array.Sort(lengths);
        return lengths;
    }

    private static double Median(int[] sorted) => sorted.Length == 0 ? 0 : (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2.0;
}
