using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Draws the lines of a front with their years.</summary>
internal static class FrontDrawing
{
    private const double LineMm = 0.35, CasingMm = 0.9;

    /// <summary>Shorter pieces, millimetres, tell nothing of a front.</summary>
    private const double LeastMm = 3;

    /// <summary>A line shorter than this on paper, millimetres, has no room for its year.</summary>
    private const double LeastNamedMm = 8;

    /// <summary>Where along a line its year may stand, as shares of its length, the best first.</summary>
    private static readonly double[] Places = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92];

    /// <summary>Draws the lines, cased in the colour of the paper so that they stand out from the squares.</summary>
    public static void Draw(IMapPen pen, IReadOnlyList<PrintedFront> fronts, MapFrame frame, SheetStyle style)
    {
        if (fronts.Count == 0)
            return;
        var lines = fronts.Select(front => (front.Year, Lines: front.Lines.Select(line => On(line, frame)).SelectMany(line => BoxClip.Line(line, frame.Box)).Where(line => Length(line) >= LeastMm).ToList())).ToList();
        var strands = lines.SelectMany(front => front.Lines).Select(line => new Strand(line, false)).ToList();
        if (strands.Count == 0)
            return;
        DrawOnce(pen, "front-casing", strands, new(null, MapInks.Paper, CasingMm), frame.Box);
        DrawOnce(pen, "front", strands, new(null, MapInks.Text, LineMm), frame.Box);
        DrawYears(pen, lines.Where(front => front.Lines.Count > 0).Select(front => (front.Year, front.Lines.MaxBy(Length)!)), style);
    }

    /// <summary>Writes each year on its longest line, where it covers no other; a year that finds no room is left to its neighbours.</summary>
    private static void DrawYears(IMapPen pen, IEnumerable<(int Year, PaperPoint[] Line)> fronts, SheetStyle style)
    {
        var text = new TextStyle(Face.Bold, style.SmallPoints, MapInks.Text, TextAnchor.Middle, MapInks.Paper);
        var taken = new List<PaperBox>();
        foreach (var (year, line) in fronts.Where(front => Length(front.Line) >= LeastNamedMm))
        {
            var name = year.ToString(CultureInfo.InvariantCulture);
            var width = MapFonts.WidthMm(name, text.Face, text.Points);
            foreach (var share in Places)
            {
                var at = Along(line, share);
                var box = new PaperBox(at.X - width / 2, at.Y - text.SizeMm / 2, width, text.SizeMm);
                if (taken.Any(box.Overlaps))
                    continue;
                taken.Add(box);
                pen.Text(new(at.X, at.Y + text.SizeMm * 0.35), name, text);
                break;
            }
        }
    }

    /// <summary>Draws the line that stands in the legend.</summary>
    public static void DrawKey(IMapPen pen, PaperPoint at, double length)
    {
        pen.StartGroup("legend-front", new(null, MapInks.Text, LineMm));
        pen.Shape([new([at, new(at.X + length, at.Y)], false)]);
        pen.EndGroup();
    }

    private static void DrawOnce(IMapPen pen, string name, List<Strand> strands, Paint paint, PaperBox clip)
    {
        pen.StartGroup(name, paint, clip);
        pen.Shape(strands);
        pen.EndGroup();
    }

    private static PaperPoint[] On(IReadOnlyList<EastNorth> line, MapFrame frame)
    {
        var british = NationalGrid.Get(GridId.British);
        return [.. line.Select(point => frame.On(frame.Plane.Id == GridId.British ? point : frame.Plane.FromLatLon(british.ToLatLon(point))))];
    }

    private static double Length(PaperPoint[] line) => line.Zip(line.Skip(1), Apart).Sum();

    private static PaperPoint Along(PaperPoint[] line, double share)
    {
        var left = Length(line) * share;
        for (var i = 1; i < line.Length; i++)
        {
            var piece = Apart(line[i - 1], line[i]);
            if (piece >= left && piece > 0)
                return new(line[i - 1].X + (line[i].X - line[i - 1].X) * left / piece, line[i - 1].Y + (line[i].Y - line[i - 1].Y) * left / piece);
            left -= piece;
        }

        return line[^1];
    }

    private static double Apart(PaperPoint a, PaperPoint b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
}
