namespace RangeMap.Records;

/// <summary>
/// Reads dates as recorders and programs write them. A vague date becomes the range of days that it names and is never
/// padded to one of them.
/// </summary>
public static class DateText
{
    /// <summary>Dates before this day are refused; an interval with an open beginning begins here.</summary>
    public static readonly DateOnly Earliest = new(1600, 1, 1);

    /// <summary>Reads a day, month, year or interval. On failure <paramref name="why"/> says what is wrong and how to mend it.</summary>
    /// <param name="text">Such as 1998-06-03, 1998-06, 1900/1909, 2007-11-13/15, ../1999, 2009-W07, 3/6/1998, 3 Jun 1998, June 1998.</param>
    /// <param name="order">How 3/6/1998 is meant.</param>
    /// <param name="today">Later days are refused; an interval with an open end ends here.</param>
    /// <param name="days">The days named.</param>
    /// <param name="why">The reason of a failure, else null.</param>
    public static bool TryParse(ReadOnlySpan<char> text, DateOrder order, DateOnly today, out DayRange days, out string? why)
    {
        text = text.Trim();
        var form = IsoDate.TryReadDay(text, out days) ? DateForm.Understood : DateForm.Other;
        why = null;
        if (form == DateForm.Other)
            form = Interval.TryRead(text, order, today, out days, out why);
        if (form == DateForm.Other)
            form = TryReadSingle(text, order, out days, out why);
        if (form == DateForm.Other)
            why = Explain(text);
        why ??= OutOfLimits(days, today);
        if (why is null)
            return true;
        days = default;
        return false;
    }

    /// <summary>Reads anything but an interval.</summary>
    internal static DateForm TryReadSingle(ReadOnlySpan<char> text, DateOrder order, out DayRange days, out string? why)
    {
        var form = IsoDate.TryRead(text, out days, out why);
        if (form == DateForm.Other)
            form = NumericDate.TryRead(text, order, out days, out why);
        if (form == DateForm.Other)
            form = NamedMonthDate.TryRead(text, out days, out why);
        return form;
    }

    /// <summary>Why the days cannot be those of an observation, or null.</summary>
    internal static string? OutOfLimits(DayRange days, DateOnly today)
    {
        if (days.First > today)
            return $"{Iso(days.First)} is in the future: this file is read on {Iso(today)}.";
        return days.First < Earliest ? $"{Iso(days.First)} is before {Earliest.Year}, earlier than any record is taken from." : null;
    }

    private static string Explain(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
            return "There is no date.";
        if (!text.ContainsAnyExceptInRange('0', '9'))
            return "This is a bare number, perhaps a spreadsheet's day count. Write the date as 1998-06-03.";
        return "This is no date in a form that is known. Write 1998-06-03, 1998-06, 1998, 3 Jun 1998 or, for a span, 1998-06-03/1998-06-10.";
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
