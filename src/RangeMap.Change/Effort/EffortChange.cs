namespace RangeMap.Change;

/// <summary>How much recorders did in the two periods that are compared.</summary>
/// <param name="Before">What they did in the earlier one.</param>
/// <param name="After">What they did in the later one.</param>
public sealed record EffortChange(EffortSummary Before, EffortSummary After)
{
    /// <summary>Counts the effort of the first and the last period; null where there are fewer than two.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="options">The thresholds of well surveyed; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static EffortChange? Of(GroupSurvey survey, ChangeOptions? options = null) => Between([.. survey.Periods.Select(period => EffortSummary.Of(survey, period, options))]);

    internal static EffortChange? Between(IReadOnlyList<EffortSummary> periods) => periods.Count < 2 ? null : new(periods[0], periods[^1]);
}
