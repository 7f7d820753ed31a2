namespace RangeMap.Records;

/// <summary>
/// Reads dates as recorders and programs write them. A vague date becomes the range of days that it names and is never
/// padded to one of them.
/// </summary>
public static class DateText
{
    /// <summary>Dates before this day are refused; an interval with an open beginning begins here.</summary>
    public static readonly DateOnly Earliest = new(1600, 1, 1);

    /// <summary>Reads a day, month, season, year, decade or interval. On failure <paramref name="why"/> says what is wrong and how to mend it.</summary>
    /// <param name="text">Such as 1998-06-03, 1998-06, 1900/1909, 2007-11-13/15, ../1999, 2009-W07, 3/6/1998, 3 Jun 1998, June 1998, spring 1998, 1980s, before 1970, c. 1985.</param>
    /// <param name="order">How 3/6/1998 is meant.</param>
    /// <param name="today">Later days are refused; an interval with an open end ends here.</param>
    /// <param name="days">The days named.</param>
    /// <param name="why">The reason of a failure, else null.</param>
    public static bool TryParse(ReadOnlySpan<char> text, DateOrder order, DateOnly today, out DayRange days, out string? why)
    {
        text = text.Trim();
        why = null;
        if (!IsoDate.TryReadDay(text, out days) && TryReadAny(Dashes.Plain(text), order, today, out days, out why) == DateForm.Other)
            why = Explain(text);
        why ??= OutOfLimits(days, today);
        if (why is null)
            return true;
        days = default;
        return false;
    }

    /// <summary>Reads anything that has no word such as "before" in front of it.</summary>
    internal static DateForm TryReadUnqualified(ReadOnlySpan<char> text, DateOrder order, DateOnly today, out DayRange days, out string? why)
    {
        var form = YearSpan.TryRead(text, today, out days, out why);
        // Before intervals, since a winter may name two years with a slash.
        if (form == DateForm.Other)
            form = SeasonDate.TryRead(text, out days, out why);
        if (form == DateForm.Other)
            form = Interval.TryRead(text, order, today, out days, out why);
        if (form == DateForm.Other)
            form = TryReadSingle(text, order, out days, out why);
        if (form == DateForm.Other)
            form = NamedMonthSpan.TryRead(text, out days, out why);
        return form;
    }

    /// <summary>Reads anything but an interval.</summary>
    internal static DateForm TryReadSingle(ReadOnlySpan<char> text, DateOrder order, out DayRange days, out string? why)
    {
        var form = IsoDate.TryRead(text, out days, out why);
        if (form == DateForm.Other)
            form = NumericDate.TryRead(text, order, out days, out why);
        if (form == DateForm.Other)
            form = NamedMonthDate.TryRead(text, out days, out why);
        if (form == DateForm.Other)
            form = SeasonDate.TryRead(text, out days, out why);
        if (form == DateForm.Other)
            form = DecadeDate.TryRead(text, out days, out why);
        return form;
    }

    /// <summary>Why the days cannot be those of an observation, or null.</summary>
    /// <param name="days">The days.</param>
    /// <param name="today">The last day that is not in the future.</param>
    /// <param name="mayBeginLater">True for a date that only bounds the observation from above.</param>
    internal static string? OutOfLimits(DayRange days, DateOnly today, bool mayBeginLater = false)
    {
        if (days.First > today && !mayBeginLater)
            return $"{Iso(days.First)} is in the future: this file is read on {Iso(today)}.";
        return days.First < Earliest ? $"{Iso(days.First)} is before {Earliest.Year}, earlier than any record is taken from." : null;
    }

    private static DateForm TryReadAny(ReadOnlySpan<char> text, DateOrder order, DateOnly today, out DayRange days, out string? why)
    {
        var weekDay = WeekDay.CutOff(ref text);
        var form = QualifiedDate.TryRead(text, order, today, out days, out why);
        if (form == DateForm.Other)
            form = TryReadUnqualified(Span(text), order, today, out days, out why);
        if (form == DateForm.Understood && days.IsOneDay && weekDay is { } stated && days.First.DayOfWeek != stated)
            why = $"{Iso(days.First)} was a {days.First.DayOfWeek}, not a {stated}.";
        return form;
    }

    /// <summary>"from 1990 to 1995" and "between 1990 and 1995" as "1990 to 1995"; any other text as it is.</summary>
    private static ReadOnlySpan<char> Span(ReadOnlySpan<char> text)
    {
        const string from = "from ", between = "between ", and = " and ";
        if (text.StartsWith(from, StringComparison.OrdinalIgnoreCase))
            return text[from.Length..].TrimStart();
        var at = text.StartsWith(between, StringComparison.OrdinalIgnoreCase) ? text.IndexOf(and, StringComparison.OrdinalIgnoreCase) : -1;
        return at < between.Length ? text : $"{text[between.Length..at]} to {text[(at + and.Length)..]}";
    }

    private static string Explain(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
            return "There is no date.";
        if (!text.ContainsAnyExceptInRange('0', '9'))
        {
            return DayCount.Since1900.Read(text) is { } counted
                ? $"This is a bare number, perhaps a spreadsheet's day count, which would make it {Iso(counted)}. Write the date like that."
                : "This is a bare number. Write the date as 1998-06-03.";
        }

        if (text.EndsWith('?'))
            return "The date carries a question mark. Take it off, or write the span of days that it may be, such as 1998-06-01/1998-06-30.";
        return "This is no date in a form that is known. Write 1998-06-03, 1998-06, 1998, 3 Jun 1998 or, for a span, 1998-06-03/1998-06-10.";
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
