namespace RangeMap.Grids;

/// <summary>Cuts closed rings on a plane at lines across an axis (Sutherland and Hodgman, Communications of the ACM 17, 1974).</summary>
/// <remarks>A ring that leaves the half and comes back is joined along the line, back and forth: such edges have no area.</remarks>
internal static class RingCut
{
    /// <summary>The pieces of a closed ring between lattice lines <paramref name="side"/> metres apart, west to east or south to north, each with the number of its strip.</summary>
    public static IEnumerable<(int Strip, EastNorth[] Piece)> Strips(EastNorth[] ring, Axis axis, int side)
    {
        var (least, most) = Reach(ring, axis);
        var rest = ring;
        for (var strip = (int)Math.Floor(least / side); (double)strip * side < most && rest.Length > 3; strip++)
        {
            var line = (strip + 1.0) * side;
            var piece = Half(rest, axis, line, -1);
            if (piece.Length > 3)
                yield return (strip, piece);
            rest = Half(rest, axis, line, 1);
        }
    }

    /// <summary>The area of a ring in a box, square metres.</summary>
    public static double AreaIn(EastNorth[] ring, PlaneBounds box)
    {
        var cut = Half(Half(ring, Axis.East, box.West, 1), Axis.East, box.East, -1);
        return Area(Half(Half(cut, Axis.North, box.South, 1), Axis.North, box.North, -1));
    }

    /// <summary>The area of a polygon (an outer ring, then holes) in a box, square metres.</summary>
    public static double AreaIn(EastNorth[][] rings, PlaneBounds box) => Math.Max(0, AreaIn(rings[0], box) - rings.Skip(1).Sum(hole => AreaIn(hole, box)));

    /// <summary>The part of a closed ring below (sign -1) or above (sign 1) a line across an axis.</summary>
    private static EastNorth[] Half(EastNorth[] ring, Axis axis, double line, int sign)
    {
        var kept = new List<EastNorth>(ring.Length);
        for (var k = 1; k < ring.Length; k++)
        {
            EastNorth a = ring[k - 1], b = ring[k];
            double from = sign * (Along(a, axis) - line), to = sign * (Along(b, axis) - line);
            if (from >= 0)
                kept.Add(a);
            if (from >= 0 != to >= 0)
                kept.Add(Between(a, b, from / (from - to)));
        }

        if (kept.Count > 0)
            kept.Add(kept[0]);
        return [.. kept];
    }

    private static (double Least, double Most) Reach(EastNorth[] ring, Axis axis)
    {
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach (var point in ring)
            (least, most) = (Math.Min(least, Along(point, axis)), Math.Max(most, Along(point, axis)));
        return (least, most);
    }

    private static double Along(EastNorth point, Axis axis) => axis == Axis.East ? point.Easting : point.Northing;

    private static EastNorth Between(EastNorth a, EastNorth b, double part) =>
        new(a.Easting + part * (b.Easting - a.Easting), a.Northing + part * (b.Northing - a.Northing));

    private static double Area(EastNorth[] ring)
    {
        var twice = 0.0;
        for (var k = 1; k < ring.Length; k++)
            twice += (ring[k - 1].Easting - ring[0].Easting) * (ring[k].Northing - ring[0].Northing) - (ring[k].Easting - ring[0].Easting) * (ring[k - 1].Northing - ring[0].Northing);
        return Math.Abs(twice) / 2;
    }
}

/// <summary>The two directions of a plane.</summary>
internal enum Axis
{
    /// <summary>Eastings.</summary>
    East,

    /// <summary>Northings.</summary>
    North,
}
