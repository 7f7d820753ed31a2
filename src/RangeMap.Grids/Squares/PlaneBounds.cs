namespace RangeMap.Grids;

/// <summary>A box on a plane, half-open: [West, East) by [South, North), metres.</summary>
/// <param name="West">Least easting, inside.</param>
/// <param name="South">Least northing, inside.</param>
/// <param name="East">Greatest easting, outside.</param>
/// <param name="North">Greatest northing, outside.</param>
public readonly record struct PlaneBounds(double West, double South, double East, double North)
{
    /// <summary>True when the point lies in the box.</summary>
    public bool Contains(EastNorth point) =>
        point.Easting >= West && point.Easting < East && point.Northing >= South && point.Northing < North;

    /// <summary>True when the two boxes share more than an edge.</summary>
    public bool Overlaps(PlaneBounds other) => West < other.East && other.West < East && South < other.North && other.South < North;

    /// <summary>The box with a margin (metres) added on every side.</summary>
    public PlaneBounds Grown(double margin) => new(West - margin, South - margin, East + margin, North + margin);

    /// <summary>The smallest box round all points; its eastern and northern edges run through the outermost of them.</summary>
    /// <exception cref="ArgumentException">There is no point.</exception>
    public static PlaneBounds Around(ReadOnlySpan<EastNorth> points)
    {
        if (points.IsEmpty)
            throw new ArgumentException("A box needs at least one point.", nameof(points));
        var box = new PlaneBounds(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
        foreach (var p in points)
            box = new(Math.Min(box.West, p.Easting), Math.Min(box.South, p.Northing), Math.Max(box.East, p.Easting), Math.Max(box.North, p.Northing));
        return box;
    }
}
