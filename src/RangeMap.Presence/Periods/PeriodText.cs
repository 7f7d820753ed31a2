using System.Globalization;

namespace RangeMap.Presence;

/// <summary>Reads periods from ISO 8601 text. The end of an interval covers its whole last unit: 2000/2009 ends with 31 December 2009.</summary>
public static class PeriodText
{
    /// <summary>The most periods that one question may name.</summary>
    public const int MostPeriods = 64;

    /// <summary>Reads a list such as <c>../1999,2000/2009,2010/..</c>; an empty text is one period without bounds.</summary>
    /// <param name="text">Periods separated by commas.</param>
    /// <param name="periods">The periods, in the order given; they may overlap.</param>
    /// <param name="why">On failure a sentence that says which part is wrong and how to mend it.</param>
    public static bool TryParseList(string? text, out IReadOnlyList<Period> periods, out string? why)
    {
        var found = new List<Period>();
        periods = found;
        foreach (var part in string.IsNullOrWhiteSpace(text) ? ["../.."] : text.Split(','))
        {
            if (!TryParse(part.Trim(), out var period, out why))
                return false;
            found.Add(period);
        }

        why = found.Count > MostPeriods ? $"{found.Count} periods were asked; at most {MostPeriods} fit in one map." : null;
        return why is null;
    }

    /// <summary>Reads one period: a year, a month, a day, or an interval of these with <c>..</c> for an open end.</summary>
    public static bool TryParse(string text, out Period period, out string? why)
    {
        period = default;
        var parts = text.Split('/');
        if (parts.Length > 2)
            return Fail($"'{text}' has more than one '/'. Write one period as start/end, such as 2000/2009.", out why);
        var (start, end) = parts.Length == 2 ? (parts[0], parts[1]) : (text, text);
        if (parts.Length == 1 && text == "..")
            return Fail("'..' alone is no period. Write ../.. for all dates.", out why);

        if (!TryBound(start, int.MinValue, out var first, out _, out why) || !TryBound(end, int.MaxValue, out _, out var after, out why))
            return false;
        if (first >= after)
            return Fail($"'{text}' ends before it starts.", out why);
        period = new Period(first, after, text);
        return true;
    }

    private static bool TryBound(string text, int open, out int firstDay, out int endDay, out string? why)
    {
        firstDay = endDay = open;
        why = null;
        if (text == "..")
            return true;
        var culture = CultureInfo.InvariantCulture;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", culture, DateTimeStyles.None, out var day))
            (firstDay, endDay) = (day.DayNumber, day.DayNumber + 1);
        else if (DateOnly.TryParseExact(text, "yyyy-MM", culture, DateTimeStyles.None, out var month) && month.Year < 9999)
            (firstDay, endDay) = (month.DayNumber, month.AddMonths(1).DayNumber);
        else if (text.Length == 4 && int.TryParse(text, NumberStyles.None, culture, out var year) && year is >= 1 and < 9999)
            (firstDay, endDay) = (new DateOnly(year, 1, 1).DayNumber, new DateOnly(year + 1, 1, 1).DayNumber);
        else
            return Fail($"'{text}' is no date. Write a year (2005), a month (2005-06), a day (2005-06-07) or .. for an open end.", out why);
        return true;
    }

    private static bool Fail(string sentence, out string? why)
    {
        why = sentence;
        return false;
    }
}
