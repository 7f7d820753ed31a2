namespace RangeMap.Maps;

/// <summary>
/// How the squares of a class are drawn: one shape of one colour, made of a frame, a core and a bar as the class needs, so that classes can be
/// told apart without colour too.
/// </summary>
/// <param name="Colour">As #rrggbb.</param>
/// <param name="Core">Side of the filled square in the middle, as a share of the side; 1 fills it, 0 leaves it out.</param>
/// <param name="Framed">True for a line along the edges.</param>
/// <param name="Barred">True for a bar from the south-west to the north-east corner.</param>
/// <param name="Hollow">True for a core of which only the edge is drawn.</param>
public sealed record ClassMark(string Colour, double Core = 1, bool Framed = false, bool Barred = false, bool Hollow = false)
{
    /// <summary>Width of frames and bars, millimetres.</summary>
    private const double LineMm = 0.22;

    /// <summary>The greatest part of a side that a line takes, so that small marks do not fill up.</summary>
    private const double MostLineShare = 0.16;

    /// <summary>The strands of the mark within a square, by the even-odd rule.</summary>
    /// <param name="corners">The square on paper, from its south-west corner anticlockwise; further points on its edges may stand between the corners.</param>
    /// <param name="sideMm">Its side.</param>
    internal IReadOnlyList<Strand> Within(IReadOnlyList<PaperPoint> corners, double sideMm)
    {
        var middle = new PaperPoint(corners.Average(corner => corner.X), corners.Average(corner => corner.Y));
        var line = Math.Min(LineMm / sideMm, MostLineShare);
        var strands = new List<Strand>();
        if (Framed)
        {
            strands.Add(new(corners, true));
            strands.Add(Scaled(corners, middle, 1 - 2 * line));
        }

        if (Core > 0)
            strands.Add(Core >= 1 ? new(corners, true) : Scaled(corners, middle, Core));
        if (Core > 0 && Hollow)
            strands.Add(Scaled(corners, middle, Math.Max(Core - 2 * line, Core * 0.4)));
        if (Barred)
            strands.Add(Bar(corners, middle, line));
        return strands;
    }

    private static Strand Scaled(IReadOnlyList<PaperPoint> corners, PaperPoint middle, double share) =>
        new([.. corners.Select(corner => Towards(middle, corner, share))], true);

    /// <summary>From corner to corner of the frame's inside, pointed at both ends so that it meets the frame without crossing it.</summary>
    private static Strand Bar(IReadOnlyList<PaperPoint> corners, PaperPoint middle, double line)
    {
        var quarter = corners.Count / 4;
        PaperPoint west = corners[0], east = corners[quarter], north = corners[2 * quarter], far = corners[3 * quarter];
        var (inside, width) = (1 - 2 * line, 1.4 * line);
        return new(
            [
                Towards(middle, west, inside), Between(middle, west, east, inside, width), Between(middle, north, east, inside, width),
                Towards(middle, north, inside), Between(middle, north, far, inside, width), Between(middle, west, far, inside, width),
            ], true);
    }

    /// <summary>A point on the inner frame, near one corner on the way to the next.</summary>
    private static PaperPoint Between(PaperPoint middle, PaperPoint corner, PaperPoint next, double inside, double share) =>
        Towards(middle, Towards(corner, next, share), inside);

    private static PaperPoint Towards(PaperPoint from, PaperPoint to, double share) => new(from.X + (to.X - from.X) * share, from.Y + (to.Y - from.Y) * share);
}
