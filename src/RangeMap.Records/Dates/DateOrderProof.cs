namespace RangeMap.Records;

/// <summary>
/// Gathers from the numeric dates of a file whether day or month comes first: 13/6/1998 proves the one, 6/13/1998 the
/// other, 3/6/1998 needs such a proof, 6/6/1998 does not matter.
/// </summary>
internal sealed class DateOrderProof
{
    private (long Line, string Text)? dayFirst;
    private (long Line, string Text)? monthFirst;
    private (long Line, string Text)? open;

    /// <summary>True when the text holds a numeric date.</summary>
    public static bool Concerns(ReadOnlySpan<char> text)
    {
        text = Unqualified(text);
        if (NumericDate.TrySplit(text, out _, out _, out _, out _))
            return true;
        return Interval.TrySplit(text, out var from, out var to)
            && (NumericDate.TrySplit(from, out _, out _, out _, out _) || NumericDate.TrySplit(to, out _, out _, out _, out _));
    }

    /// <summary>Takes account of one cell.</summary>
    public void Add(ReadOnlySpan<char> text, long line)
    {
        text = Unqualified(text);
        if (NumericDate.TrySplit(text, out var first, out var second, out _, out _))
        {
            if (first is > 12 and <= 31 && second is >= 1 and <= 12)
                dayFirst ??= (line, text.ToString());
            else if (second is > 12 and <= 31 && first is >= 1 and <= 12)
                monthFirst ??= (line, text.ToString());
            else if (first != second)
                open ??= (line, text.ToString());
        }
        else if (Interval.TrySplit(text, out var from, out var to))
        {
            Add(from, line);
            Add(to, line);
        }
    }

    private static ReadOnlySpan<char> Unqualified(ReadOnlySpan<char> text)
    {
        text = Dashes.Plain(text.Trim());
        WeekDay.CutOff(ref text);
        QualifiedDate.Cut(text, out var rest);
        return rest;
    }

    /// <summary>The order that the file proves; day first where it makes no difference.</summary>
    /// <exception cref="ImportProblemException">The file proves both orders, or needs a proof and has none.</exception>
    public DateOrder Conclude()
    {
        const string mend = "Give --date-order dmy if the day comes first or --date-order mdy if the month does.";
        if (dayFirst is { } d && monthFirst is { } m)
        {
            throw new ImportProblemException(new(
                $"The dates contradict each other: \"{d.Text}\" has the day first and \"{m.Text}\" the month.",
                $"lines {d.Line} and {m.Line}", $"Write the dates as 1998-06-03. {mend} Dates that do not fit are then refused row by row."));
        }

        if (dayFirst is null && monthFirst is null && open is { } o)
            throw new ImportProblemException(new($"Dates such as \"{o.Text}\" can be read in two ways, and no row of the file shows which is meant.", $"line {o.Line}", mend));
        return monthFirst is null ? DateOrder.DayFirst : DateOrder.MonthFirst;
    }
}
