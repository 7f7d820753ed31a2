namespace RangeMap.Grids;

/// <summary>One number, or several side by side that a processor works on at once: so a formula is written once and serves single places and whole spans.</summary>
/// <typeparam name="T">The type itself.</typeparam>
internal interface ILanes<T>
    where T : struct, ILanes<T>
{
    static abstract T operator +(T left, T right);

    static abstract T operator -(T left, T right);

    static abstract T operator *(T left, T right);

    static abstract T operator /(T left, T right);

    static abstract T operator +(double left, T right);

    static abstract T operator -(double left, T right);

    static abstract T operator *(double left, T right);

    static abstract T operator /(double left, T right);

    /// <summary>The square root.</summary>
    static abstract T Sqrt(T value);

    /// <summary>Sine and cosine of radians.</summary>
    static abstract (T Sin, T Cos) SinCos(T value);
}
