namespace RangeMap.Grids;

/// <summary>Factors between the units of angle.</summary>
internal static class Angle
{
    /// <summary>Radians in a degree.</summary>
    public const double RadiansPerDegree = Math.PI / 180;

    /// <summary>Degrees in a radian.</summary>
    public const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>Radians in a second of arc.</summary>
    public const double RadiansPerSecond = Math.PI / 648_000;

    /// <summary>Seconds of arc in a millionth of a radian, the unit of some published rotations.</summary>
    public const double SecondsPerMicroradian = 0.648 / Math.PI;
}
