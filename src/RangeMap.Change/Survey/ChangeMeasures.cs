namespace RangeMap.Change;

/// <summary>Every measure of change of the taxa of a survey. What the taxa share is computed once; a taxon then costs milliseconds.</summary>
public sealed class ChangeMeasures
{
    private readonly GroupSurvey _survey;
    private readonly ChangeOptions _options;
    private readonly PreparedChange _corrected;
    private readonly EffortChange? _effort;

    private ChangeMeasures(GroupSurvey survey, ChangeOptions options)
    {
        (_survey, _options) = (survey, options);
        Effort = [.. survey.Periods.Select(period => EffortSummary.Of(survey, period, options))];
        _corrected = EffortCorrectedChange.Prepare(survey, options);
        _effort = EffortChange.Between(Effort);
    }

    /// <summary>Effort of each period, all squares together.</summary>
    public IReadOnlyList<EffortSummary> Effort { get; }

    /// <summary>How effort grew from the first period to the last; null where there are not two.</summary>
    public EffortRatio? EffortRatio => _effort is null ? null : EffortRatio.Of(_effort.Before, _effort.After);

    /// <summary>Computes what the taxa share.</summary>
    /// <param name="survey">A whole group: the measures corrected for effort lean on the other taxa.</param>
    /// <param name="options">How.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static ChangeMeasures Prepare(GroupSurvey survey, ChangeOptions options)
    {
        options.ThrowIfOutOfRange();
        return new(survey, options);
    }

    /// <summary>The same with the alpha-hull, which takes too long to be given for every taxon of a scheme.</summary>
    /// <param name="taxon">Its index.</param>
    public IReadOnlyList<ChangeEstimate> InFull(int taxon) => [.. Of(taxon), AlphaHull.Measure(_survey, taxon, _options)];

    /// <summary>What may be said of a taxon, in words; null where there are not two periods.</summary>
    /// <param name="ofTaxon">Its estimates, as <see cref="Of"/> gives them.</param>
    public string? Verdict(IReadOnlyList<ChangeEstimate> ofTaxon) => _effort is null ? null : ChangeVerdict.Of(ofTaxon, _effort);

    /// <summary>Every measure of one taxon, those that allow for effort first, each with its interval or the reason why there is none; safe to ask from several threads.</summary>
    /// <param name="taxon">Its index.</param>
    public IReadOnlyList<ChangeEstimate> Of(int taxon) => [.. _corrected.Of(taxon), .. RangeSizeChange.Measure(_survey, taxon, _options)];
}
