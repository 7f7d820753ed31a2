namespace RangeMap.Change;

/// <summary>Effort of a survey's periods, measured once and then asked for every taxon.</summary>
public sealed class SurveyEffort
{
    private readonly SquareEffort[][] _squares;

    private SurveyEffort(SquareEffort[][] squares, IReadOnlyList<PeriodEffort> periods) => (_squares, Periods) = (squares, periods);

    /// <summary>Effort over all squares, one entry a period.</summary>
    public IReadOnlyList<PeriodEffort> Periods { get; }

    /// <summary>Effort of every square in a period.</summary>
    public IReadOnlyList<SquareEffort> Of(int period) => _squares[period];

    /// <summary>Visits of the last period for each visit of the first; null where the first has none.</summary>
    public double? VisitRatio => Periods is [{ Visits: > 0 } first, .., var last] ? (double)last.Visits / first.Visits : null;

    /// <summary>Measures the effort of a survey.</summary>
    public static SurveyEffort Of(GroupSurvey survey, ChangeOptions options)
    {
        var squares = new SquareEffort[survey.Periods.Count][];
        var periods = new PeriodEffort[survey.Periods.Count];
        for (var p = 0; p < squares.Length; p++)
        {
            var period = survey.Periods[p];
            squares[p] = new SquareEffort[survey.Squares.Count];
            for (var square = 0; square < squares[p].Length; square++)
                squares[p][square] = SquareEffort.Of(period, square);
            periods[p] = PeriodEffort.Of(period, squares[p], options);
        }

        return new(squares, periods);
    }
}

/// <summary>Effort of one period over all squares.</summary>
/// <param name="Label">The period.</param>
/// <param name="Visits">Visits.</param>
/// <param name="Recorders">Different recorders that are named.</param>
/// <param name="Records">Records.</param>
/// <param name="Squares">Squares that were surveyed at all.</param>
/// <param name="WellSurveyed">Of these, the ones that reach the thresholds.</param>
/// <param name="MeanListLength">Taxa a visit; 0 without visits.</param>
public readonly record struct PeriodEffort(string Label, int Visits, int Recorders, long Records, int Squares, int WellSurveyed, double MeanListLength)
{
    internal static PeriodEffort Of(SurveyPeriod period, SquareEffort[] squares, ChangeOptions options)
    {
        var recorders = new HashSet<int>();
        long entries = 0;
        foreach (ref readonly var visit in period.Visits.All)
        {
            entries += visit.ListLength;
            if (visit.Recorder != 0)
                recorders.Add(visit.Recorder);
        }

        var visits = period.Visits.All.Length;
        return new(
            period.Label, visits, recorders.Count, squares.Sum(s => (long)s.Records), squares.Count(s => s.Visits > 0 || s.Records > 0),
            squares.Count(s => s.IsWellSurveyed(options)), visits == 0 ? 0 : (double)entries / visits);
    }
}
