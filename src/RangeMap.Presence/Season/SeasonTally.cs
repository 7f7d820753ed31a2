using RangeMap.Records;

namespace RangeMap.Presence;

/// <summary>Counts entries into one period.</summary>
internal sealed class SeasonTally(Period period)
{
    // No stage is written with a space alone, so it can stand for none.
    private const string NoStage = " ";

    private readonly Dictionary<string, int[]> _weeks = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _plants = new(StringComparer.Ordinal);
    private int _records;

    /// <summary>Adds an entry; false when its days are not wholly inside the period.</summary>
    /// <param name="entry">What to add.</param>
    /// <param name="week">Its week; null where it is too vague.</param>
    /// <param name="records">Records that count.</param>
    public bool TryAdd(in SeasonEntry entry, int? week, int records)
    {
        if (!period.Contains(entry.Dates.First.DayNumber, entry.Dates.Last.DayNumber))
            return false;
        _records += records;
        if (week is { } known)
            WeeksOf(entry.Stage)[known - 1] += records;
        foreach (var plant in (entry.Host ?? "").Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            _plants[plant] = _plants.GetValueOrDefault(plant) + records;
        return true;
    }

    /// <summary>What was counted.</summary>
    public SeasonPeriod ToPeriod() => new(
        period,
        [.. _weeks.OrderBy(s => s.Key == NoStage).ThenBy(s => s.Key, StringComparer.Ordinal).Select(s => new StageWeeks(s.Key == NoStage ? null : s.Key, s.Value))],
        [.. _plants.GroupBy(p => p.Key, StringComparer.OrdinalIgnoreCase).Select(Visits).OrderByDescending(p => p.Records).ThenBy(p => p.Plant, StringComparer.Ordinal)],
        _records);

    private static PlantVisits Visits(IEnumerable<KeyValuePair<string, int>> spellings)
    {
        var usual = spellings.OrderByDescending(s => s.Value).ThenBy(s => s.Key, StringComparer.Ordinal).First().Key;
        return new(usual, spellings.Sum(s => s.Value));
    }

    private int[] WeeksOf(string? stage)
    {
        if (!_weeks.TryGetValue(stage ?? NoStage, out var weeks))
            _weeks.Add(stage ?? NoStage, weeks = new int[WeekSet.Most]);
        return weeks;
    }
}
