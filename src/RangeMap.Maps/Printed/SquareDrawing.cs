using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>Draws the squares of a map, class over class: the newer over the older.</summary>
internal static class SquareDrawing
{
    /// <summary>Squares from this side, millimetres, are parted by a thin line of the paper.</summary>
    private const double LeastPartedMm = 1.5;

    private const double PartingMm = 0.12;

    /// <summary>Draws the squares of one frame, a shape a square.</summary>
    public static void Draw(IMapPen pen, PrintedMap map, IEnumerable<PrintedSquare> squares, MapFrame frame, double markMm, int index)
    {
        var byClass = squares.ToLookup(square => square.Class, square => square.Square);
        for (var i = 0; i < map.Classes.Count; i++)
        {
            if (!byClass.Contains(i))
                continue;
            var mark = map.Classes[i].Mark;
            var parted = mark is { Core: >= 1, Framed: false } && markMm >= LeastPartedMm;
            pen.StartGroup(string.Create(CultureInfo.InvariantCulture, $"squares-{index}-{i}"), new(mark.Colour, parted ? MapInks.Paper : null, parted ? PartingMm : 0), frame.Box);
            foreach (var square in byClass[i])
                pen.Shape(mark.Within(Corners(square, frame, markMm), markMm), square.ToString());
            pen.EndGroup();
        }
    }

    /// <summary>The middle of a square on paper.</summary>
    public static PaperPoint Middle(Square square, MapFrame frame)
    {
        var own = NationalGrid.Get(square.Grid);
        return frame.On(own.Id == frame.Plane.Id ? square.Centre : frame.Plane.FromLatLon(own.ToLatLon(square.Centre)));
    }

    /// <summary>The outline of a square on paper, enlarged about its middle where it is too small to show.</summary>
    private static PaperPoint[] Corners(Square square, MapFrame frame, double markMm)
    {
        var corners = frame.On(SquareOutline.On(square, frame.Plane))[..^1];
        var larger = markMm / (square.SideMetres * frame.MmPerMetre);
        if (larger <= 1)
            return corners;
        var middle = new PaperPoint(corners.Average(corner => corner.X), corners.Average(corner => corner.Y));
        return Array.ConvertAll(corners, corner => new PaperPoint(middle.X + (corner.X - middle.X) * larger, middle.Y + (corner.Y - middle.Y) * larger));
    }
}
