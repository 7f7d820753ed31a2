using RangeMap.Change;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Tells where a group was recorded how well in two periods, and how alike what was found is.</summary>
internal static class MeasureEffort
{
    /// <summary>Every square that was visited or has a find, ascending.</summary>
    /// <exception cref="UserException">There is no such group, or several and none is named.</exception>
    public static (string? Group, IReadOnlyList<SquareRecording> Squares) Answer(DataSnapshot data, string? group, ChangeQuestion question) => OfGroup(data, GroupNamed(data, group), question);

    /// <summary>The same for a group that is known, or for the taxa without one.</summary>
    public static (string? Group, IReadOnlyList<SquareRecording> Squares) OfGroup(DataSnapshot data, string? named, ChangeQuestion question) =>
        (named, data.Answers.GetOrMake((named, question, "effort of squares"), () =>
        {
            var gathered = MeasureChange.GroupOf(data, named, question).Data;
            var (survey, options) = (gathered.Survey, new ChangeOptions());
            var (before, after) = (EffortTable.Of(survey, survey.Periods[0], options), EffortTable.Of(survey, survey.Periods[^1], options));
            return gathered.Squares.Select((square, i) =>
            {
                var turnover = SquareTurnover.Of(survey, i, before, after);
                return new SquareRecording(square, Count(before[i]), Count(after[i]), turnover.Gained.Count, turnover.Lost.Count, turnover.Sorensen, turnover.Turnover);
            }).ToList();
        }));

    private static string? GroupNamed(DataSnapshot data, string? group)
    {
        var groups = data.Taxa.Select(taxon => taxon.Group).Distinct().ToList();
        if (string.IsNullOrWhiteSpace(group))
            return groups is [var only] ? only : throw new UserException("There are several groups, and none is named.", "group", Choices(groups)) { IsArgument = true };
        return groups.Find(known => string.Equals(known, group.Trim(), StringComparison.OrdinalIgnoreCase))
            ?? throw new UserException($"There is no group '{group}'.", "group", Choices(groups)) { IsArgument = true };
    }

    private static string Choices(List<string?> groups) => $"Name one of: {string.Join(", ", groups.OfType<string>().Order(StringComparer.Ordinal))}.";

    private static EffortCount Count(SquareEffort effort) => new(effort.Visits, effort.Recorders, effort.Taxa, effort.ByLists.Coverage, effort.WellSurveyed);
}
