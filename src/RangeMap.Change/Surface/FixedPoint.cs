namespace RangeMap.Change;

/// <summary>
/// A value that is replaced again and again by a better one until the two agree. Where two steps in a row tell how slowly it creeps, the step is made as long as the secant through
/// them asks.
/// </summary>
/// <param name="value">Where it begins.</param>
internal sealed class FixedPoint(double value)
{
    private const double LongestStep = 1.5;
    private const double MostTimes = 8;

    private double _lastValue = double.NaN, _lastStep;

    /// <summary>The value as it stands.</summary>
    public double Value { get; private set; } = value;

    /// <summary>Moves on, knowing what the rule gives in place of the value.</summary>
    public void Advance(double better)
    {
        var step = better - Value;
        var slope = (step - _lastStep) / (Value - _lastValue);
        var times = slope is < 0 and > -2 ? Math.Clamp(-1 / slope, 1, MostTimes) : 1;
        (_lastValue, _lastStep) = (Value, step);
        Value += Math.Clamp(times * step, -LongestStep, LongestStep);
    }
}
