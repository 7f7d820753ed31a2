namespace RangeMap.Records;

/// <summary>
/// Dates with a word before them: before 1970, pre-1970, until 1970, after 1990, since 1990, c. 1985. An open side is 1600-01-01 or the day
/// of the import. "Circa" widens by a length that is ours: a day by 7 days on either side, a month or season by 1 month, a year or more by 2 years.
/// </summary>
internal static class QualifiedDate
{
    private const int DaysAroundADay = 7;
    private const int YearsAroundAYear = 2;
    private const int ShortestYear = 300;

    private static readonly (DateQualifier Meaning, string[] Words)[] Words =
    [
        (DateQualifier.Until, ["<=", "\u2264", "until", "till", "up to", "by", "not later than"]),
        (DateQualifier.Since, [">=", "\u2265", "since", "from", "not earlier than"]),
        (DateQualifier.Before, ["<", "before", "bef", "prior to", "earlier than", "pre"]),
        (DateQualifier.After, [">", "after", "later than", "post"]),
        (DateQualifier.Circa, ["~", "circa", "about", "around", "approximately", "approx", "ca", "c"]),
    ];

    public static DateForm TryRead(ReadOnlySpan<char> text, DateOrder order, DateOnly today, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        var qualifier = Cut(text, out var rest);
        if (qualifier == DateQualifier.None)
            return DateForm.Other;
        var form = DateText.TryReadUnqualified(rest, order, today, out var named, out why);
        if (form != DateForm.Understood || (why = DateText.OutOfLimits(named, today, qualifier is DateQualifier.Before or DateQualifier.Until)) is not null)
            return form == DateForm.Other ? DateForm.Other : DateForm.Wrong;
        if (named.First == DateText.Earliest && qualifier == DateQualifier.Before)
            why = $"That is before {DateText.Earliest.Year}, earlier than any record is taken from.";
        else if (named.Last >= today && qualifier == DateQualifier.After)
            why = "That is in the future.";
        else
            days = Apply(qualifier, named, today);
        return why is null ? DateForm.Understood : DateForm.Wrong;
    }

    /// <summary>The qualifier at the beginning of a text, and what follows it; "from ... to ..." has none.</summary>
    public static DateQualifier Cut(ReadOnlySpan<char> text, out ReadOnlySpan<char> rest)
    {
        rest = text;
        if (text.IsEmpty || char.IsAsciiDigit(text[0]))
            return DateQualifier.None;
        foreach (var (meaning, words) in Words)
        {
            foreach (var word in words)
            {
                if (!TryCut(text, word, out var after))
                    continue;
                rest = after;
                var isSpan = meaning == DateQualifier.Since && Interval.TrySplit(after, out _, out _);
                return isSpan ? DateQualifier.None : meaning;
            }
        }

        return DateQualifier.None;
    }

    /// <summary>True when the text begins with the word, and what follows is not another letter of it.</summary>
    private static bool TryCut(ReadOnlySpan<char> text, string word, out ReadOnlySpan<char> after)
    {
        after = default;
        if (!text.StartsWith(word, StringComparison.OrdinalIgnoreCase) || text.Length == word.Length || char.IsLetter(text[word.Length]))
            return false;
        after = text[word.Length..].TrimStart(" .-:");
        return !after.IsEmpty;
    }

    private static DayRange Apply(DateQualifier qualifier, DayRange named, DateOnly today) => qualifier switch
    {
        DateQualifier.Before => new(DateText.Earliest, Earlier(named.First.AddDays(-1), today)),
        DateQualifier.Until => new(DateText.Earliest, Earlier(named.Last, today)),
        DateQualifier.After => new(named.Last.AddDays(1), today),
        DateQualifier.Since => new(named.First, today),
        _ => Around(named, today),
    };

    private static DayRange Around(DayRange named, DateOnly today)
    {
        var after = named.Last.AddDays(1);
        var length = after.DayNumber - named.First.DayNumber;
        var (first, last) = length <= DaysAroundADay ? (named.First.AddDays(-DaysAroundADay), named.Last.AddDays(DaysAroundADay))
            : length < ShortestYear ? (named.First.AddMonths(-1), after.AddMonths(1).AddDays(-1))
            : (named.First.AddYears(-YearsAroundAYear), after.AddYears(YearsAroundAYear).AddDays(-1));
        return new(first < DateText.Earliest ? DateText.Earliest : first, Earlier(last, today));
    }

    private static DateOnly Earlier(DateOnly one, DateOnly other) => one < other ? one : other;
}
