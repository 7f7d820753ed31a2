namespace RangeMap.Maps;

/// <summary>
/// Leaves out the points of a line that stay within a tolerance of the thinned line: D. H. Douglas and T. K. Peucker, "Algorithms for the
/// reduction of the number of points required to represent a digitized line" (1973). Both ends stay, and a line drawn backwards is thinned to
/// the same points, so that neighbours keep sharing a border.
/// </summary>
internal static class LineThinning
{
    /// <summary>The points that stay.</summary>
    /// <param name="points">At least two points.</param>
    /// <param name="tolerance">Greatest distance of a point left out, in the unit of the points; 0 or more.</param>
    public static List<PaperPoint> Thin(ReadOnlySpan<PaperPoint> points, double tolerance)
    {
        // Always from the same end, so that points equally far away are chosen alike whichever way the line was drawn.
        if ((points[0].X, points[0].Y).CompareTo((points[^1].X, points[^1].Y)) > 0)
        {
            var turned = points.ToArray();
            Array.Reverse(turned);
            var back = Thin(turned, tolerance);
            back.Reverse();
            return back;
        }

        var keep = new bool[points.Length];
        keep[0] = keep[^1] = true;
        var open = new Stack<(int From, int To)>([(0, points.Length - 1)]);
        while (open.TryPop(out var span))
        {
            var (farthest, distance) = Farthest(points, span.From, span.To);
            if (distance <= tolerance * tolerance)
                continue;
            keep[farthest] = true;
            open.Push((span.From, farthest));
            open.Push((farthest, span.To));
        }

        var thinned = new List<PaperPoint>();
        for (var i = 0; i < points.Length; i++)
        {
            if (keep[i])
                thinned.Add(points[i]);
        }

        return thinned;
    }

    /// <summary>The point farthest from the straight line between two others, and the square of its distance.</summary>
    private static (int Index, double Squared) Farthest(ReadOnlySpan<PaperPoint> points, int from, int to)
    {
        PaperPoint a = points[from], b = points[to];
        double dx = b.X - a.X, dy = b.Y - a.Y, length = dx * dx + dy * dy, most = -1;
        var index = from;
        for (var i = from + 1; i < to; i++)
        {
            double px = points[i].X - a.X, py = points[i].Y - a.Y;
            var along = length == 0 ? 0 : Math.Clamp((px * dx + py * dy) / length, 0, 1);
            double offX = px - along * dx, offY = py - along * dy, off = offX * offX + offY * offY;
            if (off > most)
                (index, most) = (i, off);
        }

        return (index, most);
    }
}
