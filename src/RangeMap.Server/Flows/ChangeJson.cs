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
internal sealed record ChangeJson(
    string From, string To, string Grid, long Edition, IReadOnlyList<GroupEffortJson> Effort, IReadOnlyList<ChangeEstimateJson> Taxa, IReadOnlyList<ChangeVerdictJson> Verdicts)
{
    public static ChangeJson Of(DataSnapshot data, ChangeQuestion question, IReadOnlyList<RangeChange> changes) => new(
        question.From.Text, question.To.Text, question.Size.ToText(), data.Edition.Number,
        [.. changes.DistinctBy(change => change.Group).Select(change => GroupEffortJson.Of(change.Taxon.Group, change.Group))],
        [.. changes.SelectMany(change => change.Estimates.Select(estimate => ChangeEstimateJson.Of(change, estimate)))],
        [.. changes.Select(ChangeVerdictJson.Of)]);
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
    string Taxon, string ScientificName, string Method, string Label, string Unit, double? Value, double? Low, double? High, double? Before, double? After, int N, string? Note, string? Refused)
{
    private const int Decimals = 4;

    public static ChangeEstimateJson Of(RangeChange change, ChangeEstimate estimate) => new(
        change.Taxon.Id, change.Taxon.ScientificName, estimate.Method, ChangeLabels.Of(estimate.Method), estimate.Unit,
        Rounded.To(estimate.Value, Decimals), Rounded.To(estimate.Low, Decimals), Rounded.To(estimate.High, Decimals),
        Rounded.To(estimate.Before, Decimals), Rounded.To(estimate.After, Decimals), estimate.N, estimate.Note, estimate.Refused);
}

/// <summary>The findings on one taxon: what became of its squares, and the sentence.</summary>
internal sealed record ChangeVerdictJson(string Taxon, string ScientificName, int Gained, int Lost, int Kept, int NotSurveyedBefore, int NotSurveyedAfter)
{
    public static ChangeVerdictJson Of(RangeChange change)
    {
        var fates = change.Fates.CountBy(fate => fate.Fate).ToDictionary();
        int Count(SquareFate fate) => fates.GetValueOrDefault(fate);
        return new(
            change.Taxon.Id, change.Taxon.ScientificName, Count(SquareFate.Gained), Count(SquareFate.Lost), Count(SquareFate.Kept),
            Count(SquareFate.NotSurveyedBefore), Count(SquareFate.NotSurveyedAfter));
    }
}

/// <summary>Rounds for people and files what arithmetic gives with more figures than it means.</summary>
internal static class Rounded
{
    public static double? To(double? value, int decimals) => value is { } number ? Math.Round(number, decimals) : null;
}
