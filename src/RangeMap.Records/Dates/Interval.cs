namespace RangeMap.Records;

/// <summary>
/// Intervals of ISO 8601: both ends written out, the end shortened (2007-11-13/15), a duration (2001-01-01/P1Y, P1Y/2001-12-31), an open
/// end (../1999, 1999/..); also two dates joined by " - " or " to ".
/// </summary>
/// <remarks>
/// The end covers its last unit: 1900/1909 runs to 31 December 1909, as Darwin Core has long described it. An open
/// beginning is 1600-01-01, an open end the day of the import: the observation was made by then.
/// </remarks>
internal static class Interval
{
    private const string EndInFuture = "The interval ends in the future.";
    private const string EndFirst = "The interval ends before it begins.";

    public static DateForm TryRead(ReadOnlySpan<char> text, DateOrder order, DateOnly today, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        if (!TrySplit(text, out var from, out var to))
            return DateForm.Other;
        bool openFrom = from is "" or "..", openTo = to is "" or "..";
        if (openFrom && openTo)
        {
            why = "The interval is open at both ends and says nothing.";
            return DateForm.Wrong;
        }

        if (from.Length > 0 && from[0] is 'P' or 'p')
            return TryReadDurationFirst(from[1..], to, order, today, out days, out why);
        DayRange begin = DayRange.Day(DateText.Earliest), end = DayRange.Day(today);
        var form = openFrom ? DateForm.Understood : DateText.TryReadSingle(from, order, out begin, out why);
        if (form == DateForm.Understood && !openTo)
            form = TryReadEnd(from, begin, to, order, out end, out why);
        if (form != DateForm.Understood)
            return form;
        if (openFrom && end.First > today)
            end = DayRange.Day(today);
        if (!openTo && !openFrom && end.First > today && begin.First <= today)
            why = EndInFuture;
        else if (end.Last < begin.First && (openFrom || !openTo))
            why = EndFirst;
        days = new(begin.First, openTo && begin.First > today ? begin.Last : end.Last);
        return why is null ? DateForm.Understood : DateForm.Wrong;
    }

    /// <summary>Parts at the only slash of the text, or at " - " or " to ".</summary>
    internal static bool TrySplit(ReadOnlySpan<char> text, out ReadOnlySpan<char> from, out ReadOnlySpan<char> to)
    {
        int at = text.IndexOf('/'), width = 1;
        if (at < 0 || text[(at + 1)..].Contains('/'))
        {
            at = text.IndexOf(" - ", StringComparison.Ordinal);
            width = 3;
            if (at < 0)
            {
                at = text.IndexOf(" to ", StringComparison.OrdinalIgnoreCase);
                width = 4;
            }
        }

        from = at < 0 ? default : text[..at].Trim();
        to = at < 0 ? default : text[(at + width)..].Trim();
        return at >= 0;
    }

    private static DateForm TryReadEnd(ReadOnlySpan<char> from, DayRange begin, ReadOnlySpan<char> to, DateOrder order, out DayRange end, out string? why)
    {
        if (to[0] is 'P' or 'p')
        {
            var last = IsoDuration.TryRead(to[1..], out var duration) ? duration.LastDayFrom(begin.First) : null;
            why = last is null ? IsoDuration.Known : null;
            end = last is { } day ? DayRange.Day(day) : default;
            return why is null ? DateForm.Understood : DateForm.Wrong;
        }

        var shortForm = TryReadShortened(from, begin, to, out end, out why);
        return shortForm == DateForm.Other ? DateText.TryReadSingle(to, order, out end, out why) : shortForm;
    }

    /// <summary>An end that leaves out what it shares with the beginning: 13/15 days, 11/12 months, 08:40/09:10 times.</summary>
    private static DateForm TryReadShortened(ReadOnlySpan<char> from, DayRange begin, ReadOnlySpan<char> to, out DayRange end, out string? why)
    {
        end = begin;
        why = null;
        var date = TimeOfDay.CutOff(from, out var hadTime);
        if (hadTime && to.Contains(':') && TimeOfDay.IsTime(to, needsColon: true))
            return DateForm.Understood;
        to = TimeOfDay.CutOff(to, out _);
        var isDay = date.Length == 10 && date[4] == '-' && date[7] == '-';
        var isMonth = date.Length == 7 && date[4] == '-';
        if (to.Length == 2 && Figures.TryRead(to, out var unit))
        {
            if (isDay)
                return IsoDate.TryMakeDay(begin.First.Year, begin.First.Month, unit, out end, out why);
            if (isMonth)
                return IsoDate.TryMakeMonth(begin.First.Year, unit, out end, out why);
            why = date.Length == 4
                ? "A year, a slash and two figures could be a month or a span of years. Write 1998-06 or 1998/2006."
                : EndFirst;
            return DateForm.Wrong;
        }

        if (isDay && to.Length == 5 && to[2] == '-' && Figures.TryRead(to[..2], out var month) && Figures.TryRead(to[3..], out var day))
            return IsoDate.TryMakeDay(begin.First.Year, month, day, out end, out why);
        return DateForm.Other;
    }

    /// <summary>A duration and the end that it leads to: P1Y/2001-12-31 begins on 1 January 2001.</summary>
    private static DateForm TryReadDurationFirst(ReadOnlySpan<char> duration, ReadOnlySpan<char> to, DateOrder order, DateOnly today, out DayRange days, out string? why)
    {
        days = default;
        var form = DateText.TryReadSingle(to, order, out var end, out why);
        if (form != DateForm.Understood)
            return form;
        if (end.First > today)
            why = EndInFuture;
        else if (IsoDuration.TryRead(duration, out var length) && length.FirstDayTo(end.Last) is { } first)
            days = new(first, end.Last);
        else
            why = IsoDuration.Known;
        return why is null ? DateForm.Understood : DateForm.Wrong;
    }
}
