using RangeMap.Change;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>A report of change in the form of machine output, the same over HTTP and on the command line.</summary>
/// <param name="From">The earlier period.</param>
/// <param name="To">The later period.</param>
/// <param name="Grid">Side of the squares.</param>
/// <param name="Edition">The edition of the data.</param>
/// <param name="Effort">Effort of the two periods, by group.</param>
/// <param name="Taxa">One entry a taxon and method.</param>
/// <param name="Verdicts">The findings in words, one entry a taxon.</param>
/// <param name="Screenings">All taxa of a group by one method, with what chance alone would show; none for a single taxon.</param>
internal sealed record ChangeJson(
    string From, string To, string Grid, long Edition, IReadOnlyList<GroupEffortJson> Effort, IReadOnlyList<ChangeEstimateJson> Taxa, IReadOnlyList<ChangeVerdictJson> Verdicts,
    IReadOnlyList<ScreeningJson> Screenings)
{
    public static ChangeJson Of(DataSnapshot data, ChangeQuestion question, IReadOnlyList<RangeChange> changes) => new(
        question.From.Text, question.To.Text, question.Size.ToText(), data.Edition.Number,
        [.. changes.DistinctBy(change => change.Group).Select(change => GroupEffortJson.Of(change.Taxon.Group, change.Group))],
        [.. changes.SelectMany(change => change.Estimates.Select(estimate => ChangeEstimateJson.Of(change, estimate)))],
        [.. changes.Select(ChangeVerdictJson.Of)],
        [.. changes.GroupBy(change => change.Group).Where(group => group.Count() > 1).SelectMany(ScreeningJson.Of)]);
}

/// <summary>Effort of a group in the two periods.</summary>
internal sealed record GroupEffortJson(string? Group, double? VisitRatio, double? RecorderRatio, IReadOnlyList<PeriodEffortJson> Periods)
{
    public static GroupEffortJson Of(string? name, GroupMeasures group) =>
        new(name, Rounded.To(group.Measures.EffortRatio?.Visits, 3), Rounded.To(group.Measures.EffortRatio?.Recorders, 3), [.. group.Measures.Effort.Select(PeriodEffortJson.Of)]);
}

/// <summary>Effort of one period.</summary>
internal sealed record PeriodEffortJson(string Period, int Visits, int Recorders, long Records, int Squares, int WellSurveyed, double? MeanListLength)
{
    public static PeriodEffortJson Of(EffortSummary effort) =>
        new(effort.Label, effort.Visits, effort.Recorders, effort.Records, effort.Squares, effort.WellSurveyed, Rounded.To(effort.MeanListLength, 3));
}

/// <summary>One measure of one taxon.</summary>
internal sealed record ChangeEstimateJson(
    string Taxon, string ScientificName, string Method, string Label, string Unit, double? Value, double? Low, double? High, double? Before, double? After, int N, double? P, string? Note, string? Refused)
{
    private const int Decimals = 4;

    public static ChangeEstimateJson Of(RangeChange change, ChangeEstimate estimate) => new(
        change.Taxon.Id, change.Taxon.ScientificName, estimate.Method, ChangeLabels.Of(estimate.Method), estimate.Unit,
        Rounded.To(estimate.Value, Decimals), Rounded.To(estimate.Low, Decimals), Rounded.To(estimate.High, Decimals),
        Rounded.To(estimate.Before, Decimals), Rounded.To(estimate.After, Decimals), estimate.N, Rounded.To(estimate.P, 6), estimate.Note, estimate.Refused);
}

/// <summary>The findings on one taxon: what became of its squares, and the sentence.</summary>
internal sealed record ChangeVerdictJson(string Taxon, string ScientificName, int Gained, int Lost, int Kept, int NotSurveyedBefore, int NotSurveyedAfter, string? Words)
{
    public static ChangeVerdictJson Of(RangeChange change)
    {
        var fates = change.Fates.CountBy(fate => fate.Fate).ToDictionary();
        int Count(SquareFate fate) => fates.GetValueOrDefault(fate);
        return new(
            change.Taxon.Id, change.Taxon.ScientificName, Count(SquareFate.Gained), Count(SquareFate.Lost), Count(SquareFate.Kept),
            Count(SquareFate.NotSurveyedBefore), Count(SquareFate.NotSurveyedAfter), change.Group.Measures.Verdict(change.Estimates));
    }
}

/// <summary>All taxa of a group by one method, the most striking first.</summary>
internal sealed record ScreeningJson(string? Group, string Method, string Label, string Caution, IReadOnlyList<ScreenedTaxonJson> Taxa)
{
    /// <summary>One entry for each method that gives p-values.</summary>
    public static IEnumerable<ScreeningJson> Of(IGrouping<GroupMeasures, RangeChange> group)
    {
        var byIndex = group.ToDictionary(change => change.Index, change => change.Taxon);
        var estimates = group.SelectMany(change => change.Estimates).ToList();
        return estimates.Where(estimate => estimate.P is not null).Select(estimate => estimate.Method).Distinct().Select(method =>
        {
            var screening = Screening.Of(estimates, method);
            return new ScreeningJson(
                group.First().Taxon.Group, method, ChangeLabels.Of(method), screening.Caution,
                [.. screening.Taxa.Select(one => new ScreenedTaxonJson(byIndex[one.Estimate.Taxon].Id, Rounded.To(one.Estimate.P, 6), Math.Round(one.Adjusted, 6), one.StandsOut))]);
        });
    }
}

/// <summary>One taxon of a screening: its p-value, the share of false alarms to expect among those at least as striking, and whether it stands out.</summary>
internal sealed record ScreenedTaxonJson(string Taxon, double? P, double Adjusted, bool StandsOut);

/// <summary>Rounds for people and files what arithmetic gives with more figures than it means.</summary>
internal static class Rounded
{
    public static double? To(double? value, int decimals) => value is { } number ? Math.Round(number, decimals) : null;
}
