using System.Globalization;

namespace RangeMap.Records;

/// <summary>Days for people to read: "7 Jun 2026", "Jun 2026", "2026", or two days with "to" between.</summary>
public static class DayWords
{
    /// <summary>The words for a range of days.</summary>
    public static string Of(DayRange days)
    {
        if (days.IsOneDay)
            return Of(days.First);
        if (days == DayRange.Year(days.First.Year))
            return days.First.Year.ToString(CultureInfo.InvariantCulture);
        return days == DayRange.Month(days.First.Year, days.First.Month)
            ? days.First.ToString("MMM yyyy", CultureInfo.InvariantCulture)
            : $"{Of(days.First)} to {Of(days.Last)}";
    }

    private static string Of(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
