using System.Globalization;
using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>When to look for a taxon.</summary>
internal static class BestWeeks
{
    private const int WeeksShown = 4;

    /// <summary>
    /// The ISO 8601 weeks of the year with most records, so that a visit comes when something is about; each is judged with those beside it, because single
    /// weeks hold few records. Ascending; empty where no record is dated to a week.
    /// </summary>
    public static IReadOnlyList<int> Of(DataSnapshot data, Taxon taxon)
    {
        var season = SeasonFold.Fold(data.Season(taxon), Ask.Periods(null), Quality.Usable).Periods[0];
        var weeks = season.Stages.Count == 0 ? 0 : season.Stages.Max(stage => stage.Weeks.Count);
        int Records(int week) => week < 0 || week >= weeks ? 0 : season.Stages.Sum(stage => stage.Weeks[week]);
        return [.. Enumerable.Range(0, weeks).Select(week => (Week: week + 1, Around: Records(week - 1) + 2 * Records(week) + Records(week + 1)))
            .Where(week => week.Around > 0).OrderByDescending(week => week.Around).ThenBy(week => week.Week).Take(WeeksShown).Select(week => week.Week).Order()];
    }

    /// <summary>Weeks as days, those in a row as one span: "9 Jun to 6 Jul".</summary>
    /// <param name="weeks">Weeks, ascending.</param>
    /// <param name="year">The year whose days are named.</param>
    public static string InWords(IReadOnlyList<int> weeks, int year)
    {
        var spans = new List<string>();
        var last = -1;
        for (var first = 0; first < weeks.Count; first = last + 1)
        {
            last = first;
            while (last + 1 < weeks.Count && weeks[last + 1] == weeks[last] + 1)
                last++;
            spans.Add(Days(year, weeks[first], weeks[last]));
        }

        return string.Join(", ", spans);
    }

    private static string Days(int year, int firstWeek, int lastWeek)
    {
        var first = DateOnly.FromDateTime(ISOWeek.ToDateTime(year, firstWeek, DayOfWeek.Monday));
        var last = DateOnly.FromDateTime(ISOWeek.ToDateTime(year, lastWeek, DayOfWeek.Sunday));
        return string.Create(CultureInfo.InvariantCulture, $"{first:d MMM} to {last:d MMM}");
    }
}
