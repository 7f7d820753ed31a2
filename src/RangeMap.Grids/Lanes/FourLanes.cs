using System.Runtime.Intrinsics;

namespace RangeMap.Grids;

/// <summary>Four numbers side by side.</summary>
internal readonly struct FourLanes(Vector256<double> value) : ILanes<FourLanes>
{
    /// <summary>The numbers.</summary>
    public Vector256<double> Value { get; } = value;

    public static FourLanes operator +(FourLanes left, FourLanes right) => new(left.Value + right.Value);

    public static FourLanes operator -(FourLanes left, FourLanes right) => new(left.Value - right.Value);

    public static FourLanes operator *(FourLanes left, FourLanes right) => new(left.Value * right.Value);

    public static FourLanes operator /(FourLanes left, FourLanes right) => new(left.Value / right.Value);

    public static FourLanes operator +(double left, FourLanes right) => new(Vector256.Create(left) + right.Value);

    public static FourLanes operator -(double left, FourLanes right) => new(Vector256.Create(left) - right.Value);

    public static FourLanes operator *(double left, FourLanes right) => new(Vector256.Create(left) * right.Value);

    public static FourLanes operator /(double left, FourLanes right) => new(Vector256.Create(left) / right.Value);

    public static FourLanes Sqrt(FourLanes value) => new(Vector256.Sqrt(value.Value));

    public static (FourLanes Sin, FourLanes Cos) SinCos(FourLanes value)
    {
        var (sin, cos) = Vector256.SinCos(value.Value);
        return (new(sin), new(cos));
    }
}
