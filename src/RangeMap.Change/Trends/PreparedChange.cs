namespace RangeMap.Change;

/// <summary>
/// What all taxa of a group share, computed once: the line of the group, the neighbourhoods, the visits by year, length and square. Any
/// taxon then costs a few milliseconds. Safe to be asked from several threads.
/// </summary>
public sealed class PreparedChange
{
    private static readonly (string Method, string Unit)[] _methods =
    [
        (ChangeMethods.RelativeIndex, "standard deviations"), (ChangeMethods.NeighbourhoodFrequency, "%"), (ChangeMethods.ListLength, "logit per decade"),
        (ChangeMethods.ReportingRate, "percentage points"), (ChangeMethods.Occupancy, "percentage points"),
    ];

    private readonly ChangeOptions _options;
    private readonly Group? _group;

    internal PreparedChange(GroupSurvey survey, ChangeOptions options)
    {
        options.ThrowIfOutOfRange();
        (Taxa, _options) = (survey.Taxa, options);
        if (survey.Periods.Count >= 2)
            _group = Group.Of(survey, options.Trends);
    }

    /// <summary>Number of taxa of the survey.</summary>
    public int Taxa { get; }

    /// <summary>
    /// The five measures of a taxon: relative-index, neighbourhood-frequency, list-length, reporting-rate, occupancy, in this order. A
    /// measure whose conditions fail is there with its reason.
    /// </summary>
    /// <param name="taxon">Index of the taxon.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such taxon.</exception>
    public IReadOnlyList<ChangeEstimate> Of(int taxon)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)taxon, (uint)Taxa, nameof(taxon));
        if (_group is null)
            return [.. _methods.Select(method => ChangeEstimate.Refuse(taxon, method.Method, method.Unit, 0, TrendWords.OnePeriod))];

        return
        [
            _group.Index.Of(taxon),
            _group.Frequency.Of(taxon),
            ListLength.Of(_group.Cells, taxon, _options.Trends),
            ReportingRate.Of(_group.Cells.Visits, taxon, _options.Trends),
            _group.Occupancy.Of(taxon),
        ];
    }

    private sealed record Group(RelativeIndex Index, NeighbourhoodFrequency Frequency, ListCells Cells, Occupancy Occupancy)
    {
        internal static Group Of(GroupSurvey survey, TrendOptions options)
        {
            var visits = SharedVisits.Of(survey);
            return new(new(survey, options), new(survey, options), new(visits, options.LeastOthers), new(visits, options));
        }
    }
}
