namespace RangeMap.Records;

/// <summary>Reads the days of a row from whichever of its columns give them.</summary>
/// <param name="today">Later days are refused.</param>
/// <param name="stated">The order of numeric dates, if stated.</param>
/// <param name="survey">Reads the whole file to find the order, or stops the import. Called at most once, and only when a numeric date turns up.</param>
/// <param name="dayCount">How the file counts days in plain numbers; null where it does not.</param>
internal sealed class RowDates(DateOnly today, DateOrder stated, Func<DateOrder> survey, DayCount? dayCount = null)
{
    private DateOrder _order = stated;

    /// <summary>The order that numeric dates are read in: stated, or as the file proved once the first of them turned up.</summary>
    public DateOrder Order => _order;

    /// <summary>Dates that were plain numbers and were read as a count of days.</summary>
    public long CountedDays { get; private set; }

    public bool TryRead(RowCells cells, out DayRange days, out Doubts doubts, out RowFault? fault)
    {
        doubts = Doubts.None;
        var date = cells[Term.EventDate];
        if (!date.IsEmpty)
        {
            if (!TryParse(Term.EventDate, date, out days, out fault))
                return false;
            if (!cells[Term.Year].IsEmpty && !Overlap(cells, days))
                doubts = Doubts.DatesDisagree;
            return true;
        }

        return cells[Term.StartDate].IsEmpty ? TryReadParts(cells, out days, out fault) : TryReadSpan(cells, out days, out fault);
    }

    private bool TryParse(Term term, ReadOnlySpan<char> text, out DayRange days, out RowFault? fault)
    {
        fault = null;
        if (dayCount?.Read(text) is { } counted && DateText.OutOfLimits(DayRange.Day(counted), today) is null)
        {
            days = DayRange.Day(counted);
            CountedDays++;
            return true;
        }

        if (_order == DateOrder.NotStated && !IsoDate.TryReadDay(text, out _) && DateOrderProof.Concerns(text) && IsDateInSomeOrder(text))
            _order = survey();
        if (DateText.TryParse(text, _order, today, out days, out var why))
            return true;
        fault = new(term, text.ToString(), why!);
        return false;
    }

    /// <summary>False for 31/02/1999: it is wrong whichever number is the month, and no reason to read the file twice.</summary>
    private bool IsDateInSomeOrder(ReadOnlySpan<char> text) =>
        DateText.TryParse(text, DateOrder.DayFirst, today, out _, out _) || DateText.TryParse(text, DateOrder.MonthFirst, today, out _, out _);

    private bool TryReadSpan(RowCells cells, out DayRange days, out RowFault? fault)
    {
        if (!TryParse(Term.StartDate, cells[Term.StartDate], out days, out fault))
            return false;
        var end = cells[Term.EndDate];
        if (end.IsEmpty)
            return true;
        if (!TryParse(Term.EndDate, end, out var last, out fault))
            return false;
        if (last.Last < days.First)
            fault = new(Term.EndDate, end.ToString(), "The end lies before the start.");
        days = new(days.First, last.Last);
        return fault is null;
    }

    private bool TryReadParts(RowCells cells, out DayRange days, out RowFault? fault)
    {
        days = default;
        ReadOnlySpan<char> year = cells[Term.Year], month = cells[Term.Month], day = cells[Term.Day];
        if (year.IsEmpty)
        {
            fault = new(Term.EventDate, "", "There is no date.");
            return false;
        }

        if (!Figures.TryRead(year, out var y) || year.Length != 4)
            fault = new(Term.Year, year.ToString(), "The year must be a number of four figures.");
        else if (month.IsEmpty && !day.IsEmpty)
            fault = new(Term.Month, "", "The day is given without the month.");
        else if (!TryReadMonth(month, out var m))
            fault = new(Term.Month, month.ToString(), "The month must be a number from 1 to 12 or an English name.");
        else if (!TryReadDayOfMonth(day, out var d))
            fault = new(Term.Day, day.ToString(), "The day must be a number from 1 to 31.");
        else
            return TryMake(y, m, d, out days, out fault);
        return false;
    }

    private bool TryMake(int year, int? month, int? day, out DayRange days, out RowFault? fault)
    {
        string? why;
        if (day is { } d && month is { } m)
            IsoDate.TryMakeDay(year, m, d, out days, out why);
        else if (month is { } alone)
            IsoDate.TryMakeMonth(year, alone, out days, out why);
        else
            IsoDate.TryMakeYear(year, out days, out why);
        why ??= DateText.OutOfLimits(days, today);
        fault = why is null ? null : new(day is not null ? Term.Day : month is not null ? Term.Month : Term.Year, $"{year} {month} {day}".TrimEnd(), why);
        return fault is null;
    }

    private static bool TryReadMonth(ReadOnlySpan<char> text, out int? month)
    {
        month = null;
        if (text.IsEmpty)
            return true;
        month = Figures.TryRead(text, out var number) ? number : NamedMonthDate.MonthOf(text);
        return number > 0 || month > 0;
    }

    private static bool TryReadDayOfMonth(ReadOnlySpan<char> text, out int? day)
    {
        day = null;
        if (text.IsEmpty)
            return true;
        var read = Figures.TryRead(text, out var number);
        day = number;
        return read;
    }

    private bool Overlap(RowCells cells, DayRange days) =>
        TryReadParts(cells, out var parts, out _) && parts.First <= days.Last && days.First <= parts.Last;
}
