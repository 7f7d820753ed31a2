namespace RangeMap.Change;

/// <summary>A confidence interval, both ends in the unit of the quantity it belongs to.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end, never below <paramref name="Low"/>.</param>
public readonly record struct Interval(double Low, double High)
{
    /// <summary>True when the value lies in the closed interval.</summary>
    public bool Contains(double value) => value >= Low && value <= High;
}
