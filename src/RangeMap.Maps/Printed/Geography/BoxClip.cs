namespace RangeMap.Maps;

/// <summary>Cuts rings and lines off beyond a box, so that a map of a small region does not carry the coast of the whole country.</summary>
internal static class BoxClip
{
    /// <summary>The part of a ring within the box, by I. E. Sutherland and G. W. Hodgman, "Reentrant polygon clipping" (1974); parts that were one may be joined along the edge of the box.</summary>
    public static PaperPoint[] Ring(PaperPoint[] ring, PaperBox box)
    {
        var cut = Side(ring, point => point.X - box.Left);
        cut = Side(cut, point => box.Right - point.X);
        cut = Side(cut, point => point.Y - box.Top);
        return Side(cut, point => box.Bottom - point.Y);
    }

    /// <summary>The pieces of a line that may show in the box: runs of segments whose own boxes meet it.</summary>
    public static IEnumerable<PaperPoint[]> Line(PaperPoint[] line, PaperBox box)
    {
        var start = -1;
        for (var i = 1; i < line.Length; i++)
        {
            if (Meets(line[i - 1], line[i], box))
            {
                start = start < 0 ? i - 1 : start;
                continue;
            }

            if (start >= 0)
                yield return line[start..i];
            start = -1;
        }

        if (start >= 0)
            yield return line[start..];
    }

    private static bool Meets(PaperPoint a, PaperPoint b, PaperBox box) =>
        Math.Max(a.X, b.X) >= box.Left && Math.Min(a.X, b.X) <= box.Right && Math.Max(a.Y, b.Y) >= box.Top && Math.Min(a.Y, b.Y) <= box.Bottom;

    private static PaperPoint[] Side(PaperPoint[] ring, Func<PaperPoint, double> inside)
    {
        var cut = new List<PaperPoint>(ring.Length);
        for (var i = 0; i < ring.Length; i++)
        {
            var (from, to) = (ring[i == 0 ? ^1 : i - 1], ring[i]);
            var (a, b) = (inside(from), inside(to));
            if (a >= 0 != b >= 0)
                cut.Add(new(from.X + (to.X - from.X) * a / (a - b), from.Y + (to.Y - from.Y) * a / (a - b)));
            if (b >= 0)
                cut.Add(to);
        }

        return [.. cut];
    }
}
