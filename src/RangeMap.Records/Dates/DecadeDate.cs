namespace RangeMap.Records;

/// <summary>
/// Decades: 1980s, 1980's, the 1980s. One that begins a century, such as 1900s, can mean ten or a hundred years; the hundred hold the ten,
/// so they are what is read.
/// </summary>
internal static class DecadeDate
{
    public static DateForm TryRead(ReadOnlySpan<char> text, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        if (text.StartsWith("the ", StringComparison.OrdinalIgnoreCase))
            text = text[4..].TrimStart();
        if (text.Length is not (5 or 6) || text[^1] is not ('s' or 'S') || (text.Length == 6 && text[4] is not ('\'' or '\u2019')))
            return DateForm.Other;
        if (!Figures.TryRead(text[..4], out var year) || year % 10 != 0 || IsoDate.TryMakeYear(year, out var first, out why) != DateForm.Understood)
            return why is null ? DateForm.Other : DateForm.Wrong;
        days = new(first.First, DayRange.Year(year + (year % 100 == 0 ? 99 : 9)).Last);
        return DateForm.Understood;
    }
}
