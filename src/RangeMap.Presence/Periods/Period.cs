namespace RangeMap.Presence;

/// <summary>A span of days, half-open: [FirstDay, EndDay), in day numbers of <see cref="DateOnly.DayNumber"/>.</summary>
/// <param name="FirstDay">The first day that belongs to it; <see cref="int.MinValue"/> for an open start.</param>
/// <param name="EndDay">The first day after it; <see cref="int.MaxValue"/> for an open end.</param>
/// <param name="Text">The ISO 8601 interval as it was asked, such as 2000/2009 or 2010/.. .</param>
public readonly record struct Period(int FirstDay, int EndDay, string Text)
{
    /// <summary>True when a range of days lies wholly inside, which is what makes a record count for the period.</summary>
    public bool Contains(int firstDay, int lastDay) => firstDay >= FirstDay && lastDay < EndDay;
}
