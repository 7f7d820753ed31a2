namespace RangeMap.Records;

/// <summary>
/// Seasons of the northern half of the world by the months that meteorologists use: spring March to May, summer June to August, autumn September to
/// November. The winter of a year begins in its December: winter 1998 and winter 1998/99 are December 1998 to February 1999.
/// </summary>
internal static class SeasonDate
{
    private const int Winter = 12;
    private static readonly (string Name, int FirstMonth)[] Seasons = [("spring", 3), ("summer", 6), ("autumn", 9), ("fall", 9), ("winter", Winter)];

    /// <summary>Reads spring 1998, Spring of 1998, 1998 spring, winter 1998/99.</summary>
    public static DateForm TryRead(ReadOnlySpan<char> text, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        Span<Range> parts = stackalloc Range[4];
        var count = text.SplitAny(parts, " ,.", StringSplitOptions.RemoveEmptyEntries);
        var hasOf = count == 3 && text[parts[1]].Equals("of", StringComparison.OrdinalIgnoreCase);
        if (count != 2 && !hasOf)
            return DateForm.Other;
        ReadOnlySpan<char> one = text[parts[0]], other = text[parts[count - 1]];
        var season = FirstMonthOf(one);
        var yearText = season > 0 ? other : one;
        if (season == 0 && !hasOf)
            season = FirstMonthOf(other);
        if (season == 0 || yearText.Length < 4 || !Figures.TryRead(yearText[..4], out var year))
            return DateForm.Other;
        if (!IsThatYear(yearText, year, season))
            why = "A season needs one year, such as spring 1998; only a winter may name the two that it lies in, such as winter 1998/99.";
        else if (year is < 1 or > 9998)
            why = $"There is no year {year}.";
        else
            days = ThreeMonths(new(year, season, 1));
        return why is null ? DateForm.Understood : DateForm.Wrong;
    }

    private static DayRange ThreeMonths(DateOnly first) => new(first, first.AddMonths(3).AddDays(-1));

    private static int FirstMonthOf(ReadOnlySpan<char> word)
    {
        foreach (var (name, month) in Seasons)
        {
            if (word.Equals(name, StringComparison.OrdinalIgnoreCase))
                return month;
        }

        return 0;
    }

    /// <summary>True for a year, and in winter for a year and the next one, which may be shortened.</summary>
    private static bool IsThatYear(ReadOnlySpan<char> text, int year, int season)
    {
        if (text.Length == 4)
            return true;
        if (season != Winter || text[4] is not ('/' or '-') || !Figures.TryRead(text[5..], out var next))
            return false;
        return text.Length switch
        {
            6 => next == (year + 1) % 10,
            7 => next == (year + 1) % 100,
            9 => next == year + 1,
            _ => false,
        };
    }
}
