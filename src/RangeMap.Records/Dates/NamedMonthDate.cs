namespace RangeMap.Records;

/// <summary>Dates with the month as an English word: 3 Jun 1998, 3rd June 1998, June 3, 1998, 3-Jun-1998, June 1998.</summary>
internal static class NamedMonthDate
{
    private static readonly string[] Names =
        ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    private static readonly string[] DayEndings = ["st", "nd", "rd", "th"];

    public static DateForm TryRead(ReadOnlySpan<char> text, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        Span<Range> parts = stackalloc Range[5];
        text = TimeOfDay.CutOff(text, out _);
        var count = text.SplitAny(parts, " ,-./", StringSplitOptions.RemoveEmptyEntries);
        if (count is not (2 or 3))
            return DateForm.Other;
        var yearText = text[parts[count - 1]];
        var monthAt = MonthOf(text[parts[0]]) > 0 ? 0 : 1;
        var month = MonthOf(text[parts[monthAt]]);
        if (month == 0 || (count == 2 && monthAt == 1) || !Figures.TryRead(yearText, out var year))
            return DateForm.Other;
        if (yearText.Length != 4)
        {
            why = "The year needs four figures, such as 1998.";
            return DateForm.Wrong;
        }

        if (count == 2)
            return IsoDate.TryMakeMonth(year, month, out days, out why);
        return TryDay(text[parts[1 - monthAt]], out var day) ? IsoDate.TryMakeDay(year, month, day, out days, out why) : DateForm.Other;
    }

    /// <summary>1 to 12 for an English month name or its beginning of three letters or more ("Sept"), else 0.</summary>
    public static int MonthOf(ReadOnlySpan<char> word)
    {
        for (var i = 0; word.Length >= 3 && i < Names.Length; i++)
        {
            if (Names[i].AsSpan().StartsWith(word, StringComparison.OrdinalIgnoreCase))
                return i + 1;
        }

        return 0;
    }

    private static bool TryDay(ReadOnlySpan<char> text, out int day)
    {
        foreach (var ending in DayEndings)
        {
            if (text.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
                text = text[..^ending.Length];
        }

        return Figures.TryRead(text, out day) && text.Length <= 2;
    }
}
