namespace RangeMap.Change;

/// <summary>
/// When a species arrived, as far as visits can tell: later than the last visit that found nothing, and not later than the first that found it. The
/// interval is open on the left and closed on the right, (After, By].
/// </summary>
/// <param name="After">Time of the last visit without the species; negative infinity where the first visit found it already.</param>
/// <param name="By">Time of the first visit with it; positive infinity where no visit found it. Later than <paramref name="After"/>.</param>
public readonly record struct CensoredYear(double After, double By)
{
    /// <summary>True where the interval is not empty, says something, and holds no NaN.</summary>
    public bool IsSound => After < By && !(double.IsNegativeInfinity(After) && double.IsPositiveInfinity(By))
        && !double.IsPositiveInfinity(After) && !double.IsNegativeInfinity(By);

    /// <summary>True where both ends are known.</summary>
    public bool IsClosed => double.IsFinite(After) && double.IsFinite(By);

    /// <summary>The middle of the interval; where one end is open, the other end.</summary>
    internal double Middle => IsClosed ? (After + By) / 2 : double.IsFinite(After) ? After : By;
}
