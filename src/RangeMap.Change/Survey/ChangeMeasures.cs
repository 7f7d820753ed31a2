namespace RangeMap.Change;

/// <summary>Every measure of change of the taxa of a survey. What the taxa share is computed once; a taxon then costs milliseconds.</summary>
public sealed class ChangeMeasures
{
    private readonly RangeSizeChange.Prepared _size;

    private ChangeMeasures(RangeSizeChange.Prepared size, SurveyEffort effort) => (_size, Effort) = (size, effort);

    /// <summary>Effort of the periods.</summary>
    public SurveyEffort Effort { get; }

    /// <summary>Computes what the taxa share.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static ChangeMeasures Prepare(GroupSurvey survey, ChangeOptions options)
    {
        options.ThrowIfOutOfRange();
        var effort = SurveyEffort.Of(survey, options);
        return new(RangeSizeChange.Prepare(survey, options, effort), effort);
    }

    /// <summary>Every measure of one taxon, each with its interval or the reason why there is none; safe to ask from several threads.</summary>
    public IReadOnlyList<ChangeEstimate> Of(int taxon) => _size.Of(taxon);
}
