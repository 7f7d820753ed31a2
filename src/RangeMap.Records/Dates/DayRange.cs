namespace RangeMap.Records;

/// <summary>The days on which an observation may have been made; both ends belong to it.</summary>
/// <param name="First">The earliest possible day.</param>
/// <param name="Last">The latest possible day, not before <paramref name="First"/>.</param>
public readonly record struct DayRange(DateOnly First, DateOnly Last)
{
    /// <summary>True for a date known to the day.</summary>
    public bool IsOneDay => First == Last;

    /// <summary>A date known to the day.</summary>
    public static DayRange Day(DateOnly day) => new(day, day);

    /// <summary>Every day of a month.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such month.</exception>
    public static DayRange Month(int year, int month) => new(new(year, month, 1), new(year, month, DateTime.DaysInMonth(year, month)));

    /// <summary>Every day of a year.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such year.</exception>
    public static DayRange Year(int year) => new(new(year, 1, 1), new(year, 12, 31));
}
