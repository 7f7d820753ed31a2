namespace RangeMap.Records;

/// <summary>Dates of three numbers with the year last, such as 3/6/1998, 03-06-1998 or 3.6.1998, with or without a time; also 06/1998.</summary>
internal static class NumericDate
{
    public static DateForm TryRead(ReadOnlySpan<char> text, DateOrder order, out DayRange days, out string? why)
    {
        days = default;
        why = null;
        if (TrySplitMonth(text, out var month, out var yearOfMonth))
            return IsoDate.TryMakeMonth(yearOfMonth, month, out days, out why);
        if (!TrySplit(text, out var first, out var second, out var year, out var yearFigures))
            return DateForm.Other;
        if (yearFigures != 4)
        {
            why = "The year needs four figures, such as 1998.";
            return DateForm.Wrong;
        }

        if (order == DateOrder.NotStated && first != second && first <= 12 && second <= 12)
        {
            why = "Day and month cannot be told apart; say which comes first.";
            return DateForm.Wrong;
        }

        var monthFirst = order == DateOrder.MonthFirst || (order == DateOrder.NotStated && second > 12);
        return IsoDate.TryMakeDay(year, monthFirst ? first : second, monthFirst ? second : first, out days, out why);
    }

    /// <summary>True for a month of one or two figures and a year of four, such as 06/1998.</summary>
    private static bool TrySplitMonth(ReadOnlySpan<char> text, out int month, out int year)
    {
        year = month = 0;
        var at = text.IndexOfAny('/', '-', '.');
        return at is 1 or 2 && text.Length == at + 5 && Figures.TryRead(text[..at], out month) && Figures.TryRead(text[(at + 1)..], out year);
    }

    /// <summary>True for one or two figures, one or two figures and a year of two or four, between /, - or points.</summary>
    public static bool TrySplit(ReadOnlySpan<char> text, out int first, out int second, out int year, out int yearFigures)
    {
        second = year = yearFigures = 0;
        text = TimeOfDay.CutOff(text.Trim(), out _);
        var one = text.IndexOfAny('/', '-', '.');
        if (one is not (1 or 2) || !Figures.TryRead(text[..one], out first))
        {
            first = 0;
            return false;
        }

        var rest = text[(one + 1)..];
        var two = rest.IndexOf(text[one]);
        if (two is not (1 or 2) || !Figures.TryRead(rest[..two], out second))
            return false;
        yearFigures = rest.Length - two - 1;
        return yearFigures is 2 or 4 && Figures.TryRead(rest[(two + 1)..], out year);
    }
}
