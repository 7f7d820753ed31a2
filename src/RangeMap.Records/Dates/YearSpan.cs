namespace RangeMap.Records;

/// <summary>
/// Spans of years with a hyphen or a shortened end: 1998-2001, 1998-99, 1998/99, 1998/9. Where one figure could also be a month, as in
/// 1998/9, the span is the wider reading and holds the month too, so nothing false is claimed; 1998-06 is a month (ISO 8601).
/// </summary>
internal static class YearSpan
{
    private const int LastMonth = 12;

    public static DateForm TryRead(ReadOnlySpan<char> text, DateOnly today, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        if (text.Length is < 6 or > 9 || text[4] is not ('-' or '/') || !Figures.TryRead(text[..4], out var first) || !Figures.TryRead(text[5..], out var end))
            return DateForm.Other;
        if (LastYear(first, text.Length - 5, end, text[4]) is not { } last)
            return DateForm.Other;
        if (last < first)
            why = "The span of years ends before it begins.";
        else if (last > today.Year && first <= today.Year)
            why = "The span of years ends in the future.";
        else if (IsoDate.TryMakeYear(first, out var begin, out why) == DateForm.Understood && IsoDate.TryMakeYear(last, out var finish, out why) == DateForm.Understood)
            days = new(begin.First, finish.Last);
        return why is null ? DateForm.Understood : DateForm.Wrong;
    }

    /// <summary>The last year, or null where the text is no span: a month, or an interval that is read elsewhere.</summary>
    private static int? LastYear(int first, int figures, int end, char separator) => figures switch
    {
        4 when separator == '-' => end,
        2 when end > LastMonth && end > first % 100 => first / 100 * 100 + end,
        1 when end > first % 10 => first / 10 * 10 + end,
        _ => null,
    };
}
