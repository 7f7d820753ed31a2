namespace RangeMap.Change;

/// <summary>The smallest convex polygon round points of a plane, by Andrew's monotone chain (Andrew 1979, Information Processing Letters 9:216-219).</summary>
public static class ConvexHull
{
    /// <summary>The corners, anticlockwise from the westernmost (of several the southernmost); fewer than three where the points lie on a line.</summary>
    public static IReadOnlyList<PlanePoint> Of(IEnumerable<PlanePoint> points)
    {
        var sorted = points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y).ToArray();
        var hull = new PlanePoint[sorted.Length + 1];
        return hull[..Chain(sorted, hull)];
    }

    /// <summary>Square kilometres of a simple polygon given by its corners; 0 for fewer than three.</summary>
    public static double AreaKm2(ReadOnlySpan<PlanePoint> corners)
    {
        var twice = 0.0;
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            twice += a.X * b.Y - b.X * a.Y;
        }

        return Math.Abs(twice) / 2;
    }

    /// <summary>Builds the hull of sorted points in the memory given; its number of corners.</summary>
    /// <param name="sorted">Ascending by X, then Y; a point may stand there more than once.</param>
    /// <param name="hull">Room for one point more than given.</param>
    internal static int Chain(ReadOnlySpan<PlanePoint> sorted, Span<PlanePoint> hull)
    {
        if (sorted.Length < 2)
        {
            sorted.CopyTo(hull);
            return sorted.Length;
        }

        var count = 0;
        foreach (var point in sorted)
            count = Push(hull, count, 0, point);
        var lower = count;
        for (var i = sorted.Length - 2; i >= 0; i--)
            count = Push(hull, count, lower - 1, sorted[i]);
        return Math.Max(1, count - 1);
    }

    /// <summary>Adds a point after dropping those that would make the chain turn right or go straight on.</summary>
    private static int Push(Span<PlanePoint> hull, int count, int floor, PlanePoint point)
    {
        while (count > floor + 1 && Turn(hull[count - 2], hull[count - 1], point) <= 0)
            count--;
        if (count > 0 && hull[count - 1] == point)
            return count;
        hull[count] = point;
        return count + 1;
    }

    private static double Turn(PlanePoint a, PlanePoint b, PlanePoint c) => (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
}
