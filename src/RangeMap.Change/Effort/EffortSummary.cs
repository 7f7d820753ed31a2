namespace RangeMap.Change;

/// <summary>The recording of a group in one period, for all squares together.</summary>
/// <param name="Label">The period.</param>
/// <param name="Visits">Visits.</param>
/// <param name="Recorders">Different recorders or parties that are named.</param>
/// <param name="Records">Records.</param>
/// <param name="Squares">Squares with a visit or a record.</param>
/// <param name="WellSurveyed">Squares well surveyed.</param>
/// <param name="MeanListLength">Mean number of taxa on a visit; null without visits.</param>
public sealed record EffortSummary(string Label, int Visits, int Recorders, long Records, int Squares, int WellSurveyed, double? MeanListLength)
{
    /// <summary>Sums up a period of a survey.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="period">One of its periods.</param>
    /// <param name="options">The thresholds of well surveyed; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static EffortSummary Of(GroupSurvey survey, SurveyPeriod period, ChangeOptions? options = null) => Of(period, EffortTable.Of(survey, period, options));

    /// <summary>Sums up a period.</summary>
    /// <param name="period">The period.</param>
    /// <param name="effort">Its effort by square.</param>
    public static EffortSummary Of(SurveyPeriod period, EffortTable effort)
    {
        var (records, squares, well) = (0L, 0, 0);
        for (var square = 0; square < effort.Count; square++)
        {
            records += effort[square].Records;
            squares += effort[square].Surveyed ? 1 : 0;
            well += effort[square].WellSurveyed ? 1 : 0;
        }

        var visits = period.Visits.All;
        var (recorders, listed) = (new HashSet<int>(), 0L);
        foreach (ref readonly var visit in visits)
        {
            listed += visit.ListLength;
            if (visit.Recorder != 0)
                recorders.Add(visit.Recorder);
        }

        return new(period.Label, visits.Length, recorders.Count, records, squares, well, visits.IsEmpty ? null : (double)listed / visits.Length);
    }
}

/// <summary>How much recording grew: later by earlier, 1 where it stayed the same, null where there was none in the earlier period.</summary>
/// <param name="Visits">Ratio of visits.</param>
/// <param name="Recorders">Ratio of named recorders.</param>
/// <param name="Records">Ratio of records.</param>
/// <param name="Squares">Ratio of squares surveyed.</param>
/// <param name="MeanListLength">Ratio of mean list lengths.</param>
public sealed record EffortRatio(double? Visits, double? Recorders, double? Records, double? Squares, double? MeanListLength)
{
    /// <summary>The ratios of two periods.</summary>
    public static EffortRatio Of(EffortSummary before, EffortSummary after) => new(
        Ratio(before.Visits, after.Visits),
        Ratio(before.Recorders, after.Recorders),
        Ratio(before.Records, after.Records),
        Ratio(before.Squares, after.Squares),
        Ratio(before.MeanListLength, after.MeanListLength));

    private static double? Ratio(double? before, double? after) => before > 0 ? after / before : null;
}
