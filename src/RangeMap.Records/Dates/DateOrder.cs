namespace RangeMap.Records;

/// <summary>How dates such as 3/6/1998 are meant.</summary>
public enum DateOrder
{
    /// <summary>Nobody said; the rows of the file must prove it.</summary>
    NotStated,

    /// <summary>Day, month, year: 3 June.</summary>
    DayFirst,

    /// <summary>Month, day, year: 6 March.</summary>
    MonthFirst,
}
