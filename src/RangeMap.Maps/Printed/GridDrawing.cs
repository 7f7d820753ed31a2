using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Draws the 100 km squares of the national grids with their letters, each island group on its own grid, so that a reader finds a reference by eye.</summary>
internal static class GridDrawing
{
    private const double LineMm = 0.1;

    /// <summary>A square of which less than this shows, millimetres, gets no letters.</summary>
    private const double LeastLetteredMm = 7;

    /// <summary>Draws the lines, each once though two squares share it.</summary>
    public static void DrawLines(IMapPen pen, IReadOnlyList<Square> lettered, MapFrame frame, MapInks inks, int index)
    {
        var drawn = new HashSet<(PaperPoint, PaperPoint)>();
        var strands = new List<Strand>();
        foreach (var outline in lettered.Select(square => Outline(square, frame)).Where(outline => Meets(outline, frame.Box)))
        {
            for (var side = 0; side < 4; side++)
            {
                var pieces = (outline.Length - 1) / 4;
                var line = outline[(side * pieces)..((side + 1) * pieces + 1)];
                var (from, to) = (Rounded(line[0]), Rounded(line[^1]));
                if (drawn.Add((from.X, from.Y).CompareTo((to.X, to.Y)) < 0 ? (from, to) : (to, from)))
                    strands.Add(new(line, false));
            }
        }

        if (strands.Count == 0)
            return;
        pen.StartGroup(string.Create(CultureInfo.InvariantCulture, $"grid-{index}"), new(null, inks.Grid, LineMm), frame.Box);
        pen.Shape(strands);
        pen.EndGroup();
    }

    /// <summary>Writes the letters in the south-west corner of each square, or of the part of it that shows.</summary>
    public static void DrawLetters(IMapPen pen, IReadOnlyList<Square> lettered, MapFrame frame, MapInks inks, SheetStyle style, IReadOnlyList<PaperBox> taken)
    {
        var text = new TextStyle(Face.Regular, style.SmallPoints, inks.Letters, Halo: MapInks.Paper);
        foreach (var square in lettered)
        {
            var outline = Outline(square, frame);
            double left = Math.Max(outline.Min(point => point.X), frame.Box.Left), right = Math.Min(outline.Max(point => point.X), frame.Box.Right);
            double top = Math.Max(outline.Min(point => point.Y), frame.Box.Top), bottom = Math.Min(outline.Max(point => point.Y), frame.Box.Bottom);
            var at = new PaperPoint(left + text.SizeMm * 0.3, bottom - text.SizeMm * 0.3);
            if (Math.Min(right - left, bottom - top) >= LeastLetteredMm && !taken.Any(box => box.Shrunk(-text.SizeMm * 2).Contains(at)))
                pen.Text(at, square.ToString(), text);
        }
    }

    private static PaperPoint[] Outline(Square square, MapFrame frame) => frame.On(SquareOutline.On(square, frame.Plane));

    private static bool Meets(PaperPoint[] outline, PaperBox box) =>
        outline.Max(point => point.X) > box.Left && outline.Min(point => point.X) < box.Right && outline.Max(point => point.Y) > box.Top && outline.Min(point => point.Y) < box.Bottom;

    private static PaperPoint Rounded(PaperPoint point) => new(Math.Round(point.X, 1), Math.Round(point.Y, 1));
}
