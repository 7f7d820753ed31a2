namespace RangeMap.Records;

/// <summary>Cuts an English week day off the beginning of a date: Wednesday, 3 June 1998.</summary>
internal static class WeekDay
{
    private const int ShortestName = 3;

    /// <summary>The text after the week day; null where it begins with none.</summary>
    public static DayOfWeek? CutOff(ref ReadOnlySpan<char> text)
    {
        var length = text.IndexOfAny(" ,.");
        if (length < ShortestName || !char.IsLetter(text[0]))
            return null;
        foreach (var day in Enum.GetValues<DayOfWeek>())
        {
            if (!day.ToString().AsSpan().StartsWith(text[..length], StringComparison.OrdinalIgnoreCase))
                continue;
            text = text[length..].TrimStart(" ,.");
            return day;
        }

        return null;
    }
}
