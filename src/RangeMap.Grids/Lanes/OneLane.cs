namespace RangeMap.Grids;

/// <summary>A single number.</summary>
internal readonly struct OneLane(double value) : ILanes<OneLane>
{
    /// <summary>The number.</summary>
    public double Value { get; } = value;

    public static OneLane operator +(OneLane left, OneLane right) => new(left.Value + right.Value);

    public static OneLane operator -(OneLane left, OneLane right) => new(left.Value - right.Value);

    public static OneLane operator *(OneLane left, OneLane right) => new(left.Value * right.Value);

    public static OneLane operator /(OneLane left, OneLane right) => new(left.Value / right.Value);

    public static OneLane operator +(double left, OneLane right) => new(left + right.Value);

    public static OneLane operator -(double left, OneLane right) => new(left - right.Value);

    public static OneLane operator *(double left, OneLane right) => new(left * right.Value);

    public static OneLane operator /(double left, OneLane right) => new(left / right.Value);

    public static OneLane Sqrt(OneLane value) => new(Math.Sqrt(value.Value));

    public static (OneLane Sin, OneLane Cos) SinCos(OneLane value)
    {
        var (sin, cos) = Math.SinCos(value.Value);
        return (new(sin), new(cos));
    }
}
