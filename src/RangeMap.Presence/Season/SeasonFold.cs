using RangeMap.Records;

namespace RangeMap.Presence;

/// <summary>From records to a season: weeks by stage and plants visited. The order of the records does not matter.</summary>
public static class SeasonFold
{
    /// <summary>A range of more days says nothing of a week.</summary>
    private const int MostDays = 7;

    /// <summary>
    /// Counts entries into the periods that wholly contain their days. One dated to at most seven days counts in the week of its
    /// middle day, the earlier of two.
    /// </summary>
    /// <param name="entries">Of one taxon.</param>
    /// <param name="periods">At least one; they may overlap, an entry then counts in each that contains it.</param>
    /// <param name="quality">Which records count.</param>
    public static SeasonChart Fold(IEnumerable<SeasonEntry> entries, IReadOnlyList<Period> periods, Quality quality)
    {
        var tallies = periods.Select(period => new SeasonTally(period)).ToArray();
        int tooVague = 0, betweenPeriods = 0, belowQuality = 0;
        foreach (var entry in entries)
        {
            var records = entry.Counts.At(quality);
            belowQuality += entry.Counts.All - records;
            if (records == 0)
                continue;
            var week = WeekOf(entry.Dates);
            var inside = false;
            foreach (var tally in tallies)
                inside |= tally.TryAdd(entry, week, records);
            betweenPeriods += inside ? 0 : records;
            tooVague += inside && week is null ? records : 0;
        }

        return new(quality, [.. tallies.Select(tally => tally.ToPeriod())], new(tooVague, betweenPeriods, belowQuality));
    }

    private static int? WeekOf(DayRange days)
    {
        int first = days.First.DayNumber, last = days.Last.DayNumber;
        return last - first < MostDays ? WeekSet.WeekOf(DateOnly.FromDayNumber(first + (last - first) / 2)) : null;
    }
}
