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
        pen.StartGroup(string.Create(CultureInfo.InvariantCulture, $"grid-{index}"), new(null, inks.Grid, LineMm, inks.GridDashMm), frame.Box);
        pen.Shape(strands);
        pen.EndGroup();
    }

    /// <summary>Writes the letters of each square in a corner that no other thing takes, the south-western first; of a square that shows in part, in a corner of that part.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="lettered">The squares.</param>
    /// <param name="frame">The map.</param>
    /// <param name="inks">The colours.</param>
    /// <param name="style">The paper.</param>
    /// <param name="isTaken">Tells whether a box is taken.</param>
    public static void DrawLetters(IMapPen pen, IReadOnlyList<Square> lettered, MapFrame frame, MapInks inks, SheetStyle style, Func<PaperBox, bool> isTaken)
    {
        var text = new TextStyle(Face.Regular, style.SmallPoints, inks.Letters, Halo: MapInks.Paper);
        foreach (var square in lettered)
        {
            var (name, outline) = (square.ToString(), Outline(square, frame));
            double left = Math.Max(outline.Min(point => point.X), frame.Box.Left), right = Math.Min(outline.Max(point => point.X), frame.Box.Right);
            double top = Math.Max(outline.Min(point => point.Y), frame.Box.Top), bottom = Math.Min(outline.Max(point => point.Y), frame.Box.Bottom);
            if (Math.Min(right - left, bottom - top) < LeastLetteredMm)
                continue;
            var (edge, width, height) = (text.SizeMm * 0.3, MapFonts.WidthMm(name, text.Face, text.Points), text.SizeMm * 0.8);
            PaperBox[] corners =
            [
                new(left + edge, bottom - edge - height, width, height), new(left + edge, top + edge, width, height),
                new(right - edge - width, top + edge, width, height), new(right - edge - width, bottom - edge - height, width, height),
            ];
            var free = Array.FindIndex(corners, corner => !isTaken(corner));
            // Where squares fill all four corners, the letters stand upon them.
            var at = corners[Math.Max(free, 0)];
            pen.Text(new(at.Left, at.Bottom), name, text);
        }
    }

    private static PaperPoint[] Outline(Square square, MapFrame frame) => frame.On(SquareOutline.On(square, frame.Plane));

    private static bool Meets(PaperPoint[] outline, PaperBox box) =>
        outline.Max(point => point.X) > box.Left && outline.Min(point => point.X) < box.Right && outline.Max(point => point.Y) > box.Top && outline.Min(point => point.Y) < box.Bottom;

    private static PaperPoint Rounded(PaperPoint point) => new(Math.Round(point.X, 1), Math.Round(point.Y, 1));
}
