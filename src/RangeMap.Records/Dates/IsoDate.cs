using System.Globalization;

namespace RangeMap.Records;

/// <summary>
/// One date of ISO 8601-1:2019: year, month, day, basic day (20090220), ordinal day (2009-034, 2009034), week (2009-W07,
/// 2009W07) and week day (2009-W07-4, 2009W074), a day also with a time of day, which is read and left out: the day counts as it is written, in the
/// writer's own time zone.
/// </summary>
internal static class IsoDate
{
    /// <summary>The usual form alone, yyyy-MM-dd, as fast as can be; false for anything else, impossible days included.</summary>
    public static bool TryReadDay(ReadOnlySpan<char> text, out DayRange days)
    {
        days = default;
        if (text.Length != 10 || text[4] != '-' || text[7] != '-')
            return false;
        if (!Figures.TryRead(text[..4], out var year) || !Figures.TryRead(text[5..7], out var month) || !Figures.TryRead(text[8..], out var day))
            return false;
        if (year < 1 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month))
            return false;
        days = DayRange.Day(new(year, month, day));
        return true;
    }

    public static DateForm TryRead(ReadOnlySpan<char> text, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        text = TimeOfDay.CutOff(text, out var hadTime);
        if (text.Length < 4 || !Figures.TryRead(text[..4], out var year))
            return DateForm.Other;
        if (text.Length == 4)
            return hadTime ? DateForm.Other : TryMakeYear(year, out days, out why);
        if (text.Length == 8 && Figures.TryRead(text[4..6], out var basicMonth) && Figures.TryRead(text[6..], out var basicDay))
            return TryMakeDay(year, basicMonth, basicDay, out days, out why);
        if (text.Length == 7 && Figures.TryRead(text[4..], out var dayOfYear))
            return TryMakeOrdinal(year, dayOfYear, out days, out why);
        if (text[4] is 'W' or 'w' && text.Length is 7 or 8)
            return TryReadWeek(year, text.Length == 7 ? text[5..] : $"{text[5..7]}-{text[7]}", out days, out why);
        if (text[4] is not ('-' or '/' or '.'))
            return DateForm.Other;
        return TryReadRest(year, text[5..], text[4], out days, out why);
    }

    /// <summary>A day that may not exist.</summary>
    public static DateForm TryMakeDay(int year, int month, int day, out DayRange days, out string? why)
    {
        if (TryMakeMonth(year, month, out days, out why) == DateForm.Wrong)
            return DateForm.Wrong;
        if (day < 1 || day > days.Last.Day)
        {
            why = day == 0
                ? "There is no day 0. If the day is not known, write the month alone, such as 1998-06."
                : $"{CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month)} {year} has {days.Last.Day} days; there is no day {day}.";
            days = default;
            return DateForm.Wrong;
        }

        days = DayRange.Day(new(year, month, day));
        return DateForm.Understood;
    }

    /// <summary>A month that may not exist.</summary>
    public static DateForm TryMakeMonth(int year, int month, out DayRange days, out string? why)
    {
        if (TryMakeYear(year, out days, out why) == DateForm.Wrong)
            return DateForm.Wrong;
        if (month is < 1 or > 12)
        {
            days = default;
            why = month == 0 ? "There is no month 0. If the month is not known, write the year alone." : $"There is no month {month}.";
            return DateForm.Wrong;
        }

        days = DayRange.Month(year, month);
        return DateForm.Understood;
    }

    /// <summary>A year that may not exist.</summary>
    public static DateForm TryMakeYear(int year, out DayRange days, out string? why)
    {
        why = year is < 1 or > 9999 ? $"There is no year {year}." : null;
        days = why is null ? DayRange.Year(year) : default;
        return why is null ? DateForm.Understood : DateForm.Wrong;
    }

    private static DateForm TryReadRest(int year, ReadOnlySpan<char> rest, char separator, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        var next = rest.IndexOf(separator);
        if (next > 0 && Figures.TryRead(rest[..next], out var month) && Figures.TryRead(rest[(next + 1)..], out var day))
            return TryMakeDay(year, month, day, out days, out why);
        if (separator != '-')
            return DateForm.Other;
        if (rest.Length > 0 && rest[0] is 'W' or 'w')
            return TryReadWeek(year, rest[1..], out days, out why);
        if (!Figures.TryRead(rest, out var number) || rest.Length > 3)
            return DateForm.Other;
        return rest.Length == 3 ? TryMakeOrdinal(year, number, out days, out why) : TryMakeMonth(year, number, out days, out why);
    }

    private static DateForm TryMakeOrdinal(int year, int dayOfYear, out DayRange days, out string? why)
    {
        if (TryMakeYear(year, out days, out why) == DateForm.Wrong)
            return DateForm.Wrong;
        if (dayOfYear < 1 || dayOfYear > days.Last.DayOfYear)
        {
            why = $"The year {year} has {days.Last.DayOfYear} days; there is no day {dayOfYear}.";
            return DateForm.Wrong;
        }

        days = DayRange.Day(days.First.AddDays(dayOfYear - 1));
        return DateForm.Understood;
    }

    private static DateForm TryReadWeek(int year, ReadOnlySpan<char> rest, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        var weekDay = 0;
        if (rest.Length is not (2 or 4) || !Figures.TryRead(rest[..2], out var week))
            return DateForm.Other;
        if (rest.Length == 4 && (rest[2] != '-' || !Figures.TryRead(rest[3..], out weekDay)))
            return DateForm.Other;
        if (year is < 1 or > 9998 || week < 1 || week > ISOWeek.GetWeeksInYear(year) || (rest.Length == 4 && weekDay is < 1 or > 7))
        {
            why = "There is no such week or week day in that year.";
            return DateForm.Wrong;
        }

        var monday = DateOnly.FromDateTime(ISOWeek.ToDateTime(year, week, DayOfWeek.Monday));
        days = rest.Length == 4 ? DayRange.Day(monday.AddDays(weekDay - 1)) : new(monday, monday.AddDays(6));
        return DateForm.Understood;
    }
}
