namespace RangeMap.Change;

/// <summary>How much recorders did in the two periods that are compared.</summary>
/// <param name="LabelBefore">The earlier period, for words.</param>
/// <param name="LabelAfter">The later period.</param>
/// <param name="Before">What they did in the earlier one.</param>
/// <param name="After">What they did in the later one.</param>
public sealed record EffortChange(string LabelBefore, string LabelAfter, EffortOfPeriod Before, EffortOfPeriod After)
{
    /// <summary>Counts the effort of the first and the last period; null where there are fewer than two.</summary>
    public static EffortChange? Of(GroupSurvey survey) => survey.Periods.Count < 2
        ? null
        : new(survey.Periods[0].Label, survey.Periods[^1].Label, EffortOfPeriod.Of(survey, survey.Periods[0]), EffortOfPeriod.Of(survey, survey.Periods[^1]));
}

/// <summary>What recorders did in a period.</summary>
/// <param name="Squares">Squares with a visit or a find.</param>
/// <param name="Visits">Visits.</param>
/// <param name="ListLength">Mean number of taxa noted on a visit; 0 without visits.</param>
public sealed record EffortOfPeriod(int Squares, int Visits, double ListLength)
{
    internal static EffortOfPeriod Of(GroupSurvey survey, SurveyPeriod period)
    {
        var (squares, listed) = (0, 0L);
        for (var square = 0; square < survey.Squares.Count; square++)
            squares += period.Surveyed(square) ? 1 : 0;
        foreach (ref readonly var visit in period.Visits.All)
            listed += visit.ListLength;
        var visits = period.Visits.All.Length;
        return new(squares, visits, visits == 0 ? 0 : (double)listed / visits);
    }
}
