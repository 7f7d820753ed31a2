namespace RangeMap.Records;

/// <summary>The days on which an observation may have been made; both ends belong to it.</summary>
/// <param name="First">The earliest possible day.</param>
/// <param name="Last">The latest possible day, not before <paramref name="First"/>.</param>
public readonly record struct DayRange(DateOnly First, DateOnly Last)
{
    /// <summary>True for a date known to the day.</summary>
    public bool IsOneDay => First == Last;
}
