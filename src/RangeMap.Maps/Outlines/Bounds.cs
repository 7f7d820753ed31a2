using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Arithmetic of boxes on a plane that drawing needs.</summary>
internal static class Bounds
{
    public static double Width(this in PlaneBounds box) => box.East - box.West;

    public static double Height(this in PlaneBounds box) => box.North - box.South;

    public static double LongerSide(this in PlaneBounds box) => Math.Max(box.Width(), box.Height());

    public static EastNorth Middle(this in PlaneBounds box) => new((box.West + box.East) / 2, (box.South + box.North) / 2);

    /// <summary>The smallest box round two boxes.</summary>
    public static PlaneBounds Union(this in PlaneBounds a, in PlaneBounds b) => new(
        Math.Min(a.West, b.West), Math.Min(a.South, b.South), Math.Max(a.East, b.East), Math.Max(a.North, b.North));

    /// <summary>True when the other box lies within this one.</summary>
    public static bool Covers(this in PlaneBounds box, in PlaneBounds other) =>
        box.West <= other.West && box.South <= other.South && box.East >= other.East && box.North >= other.North;
}
