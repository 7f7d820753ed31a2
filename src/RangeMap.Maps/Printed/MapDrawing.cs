namespace RangeMap.Maps;

/// <summary>The drawing of a printed map, the same for every format: from the land at the bottom to the words on top.</summary>
internal static class MapDrawing
{
    private const double FrameMm = 0.15;

    public static void Draw(IMapPen pen, PrintedMap map, MapSheet sheet, BaseMap geography, PrintInk ink)
    {
        var inks = MapInks.Of(ink);
        DrawHeads(pen, sheet);
        var squares = map.Squares.ToLookup(square => sheet.Frames.FirstOrDefault(frame => frame.Shows(square.Square)));
        var upon = sheet.Frames.Where(frame => frame.Name is not null).Select(frame => frame.Box).Append(sheet.LegendBox).Append(ScaleBox(sheet)).ToList();
        // The main map first: the insets lie upon its sea.
        foreach (var (frame, index) in sheet.Frames.Reverse().Select((frame, i) => (frame, i)))
            DrawFrame(pen, map, squares[frame], sheet, geography, inks, frame, index, frame.Name is null ? upon : []);
        DrawBox(pen, "legend", sheet.LegendBox, new(MapInks.Paper));
        ScaleBar.Draw(pen, sheet.Main, ScaleAt(sheet), ScaleRoom(sheet), sheet.Style);
        sheet.Legend.Draw(pen, sheet.LegendAt);
        sheet.Source.Draw(pen, new(sheet.Style.Margin, sheet.SourceTop), MapInks.Quiet);
    }

    private static void DrawHeads(IMapPen pen, MapSheet sheet)
    {
        var top = sheet.Style.Margin;
        foreach (var head in sheet.Heads)
        {
            head.Draw(pen, new(sheet.Style.Margin, top), MapInks.Text);
            top += head.Height;
        }
    }

    private static void DrawFrame(
        IMapPen pen, PrintedMap map, IEnumerable<PrintedSquare> squares, MapSheet sheet, BaseMap geography, MapInks inks, MapFrame frame, int index, IReadOnlyList<PaperBox> upon)
    {
        var land = geography.On(frame.Plane);
        if (frame.Name is not null)
            DrawBox(pen, $"inset-{index}", frame.Box, new(MapInks.Paper));
        var lettered = geography.Lettered.Where(square => frame.IsLettered(square.Grid)).ToList();
        LandDrawing.DrawLand(pen, land, map.Area.Outline, frame, inks, index);
        GridDrawing.DrawLines(pen, lettered, frame, inks, index);
        SquareDrawing.Draw(pen, map, squares, frame, sheet.MarkMm, index);
        LandDrawing.DrawLines(pen, land, frame, inks, index);
        GridDrawing.DrawLetters(pen, lettered, frame, inks, sheet.Style, Taken(squares, frame, sheet.MarkMm, upon));
        if (frame.Name is null)
            FrontDrawing.Draw(pen, map.Fronts, frame, sheet.Style);
        DrawBox(pen, $"frame-{index}", frame.Box, new(null, inks.Coast, FrameMm));
        if (frame.Name is { } name)
            DrawName(pen, name, frame.Box, sheet);
    }

    private static void DrawName(IMapPen pen, string name, PaperBox box, MapSheet sheet)
    {
        var small = new TextStyle(Face.Regular, sheet.Style.SmallPoints, MapInks.Quiet, Halo: MapInks.Paper);
        // An inset at the right edge is named below it, flush right; one at the lower edge above it.
        var atRight = box.Left > sheet.Main.Box.Left + sheet.Main.Box.Width / 2;
        if (atRight)
            pen.Text(new(box.Right, box.Bottom + small.SizeMm * 1.1), name, small with { Anchor = TextAnchor.End });
        else
            pen.Text(new(box.Left, box.Top - small.SizeMm * 0.4), name, small);
    }

    private static void DrawBox(IMapPen pen, string name, PaperBox box, Paint paint)
    {
        pen.StartGroup(name, paint);
        pen.Shape([new(box.Corners, true)]);
        pen.EndGroup();
    }

    /// <summary>Tells whether squares, insets, the legend or the scale lie in a box.</summary>
    private static Func<PaperBox, bool> Taken(IEnumerable<PrintedSquare> squares, MapFrame frame, double markMm, IReadOnlyList<PaperBox> upon)
    {
        var marks = squares.Select(square => SquareDrawing.Middle(square.Square, frame)).Select(middle => new PaperBox(middle.X - markMm / 2, middle.Y - markMm / 2, markMm, markMm)).ToList();
        return box => marks.Any(box.Overlaps) || upon.Any(box.Overlaps);
    }

    private static PaperBox ScaleBox(MapSheet sheet)
    {
        var (at, high) = (ScaleAt(sheet), sheet.Style.SmallPoints * TextStyle.MmPerPoint * 2);
        return new(at.X, at.Y - high, ScaleBar.LengthMm(sheet.Main, ScaleRoom(sheet)), high);
    }

    private static double ScaleRoom(MapSheet sheet) => sheet.Main.Box.Width / 6;

    /// <summary>On the map of all islands in the sea right of the lower inset; else below the map on the right, where no island can lie.</summary>
    private static PaperPoint ScaleAt(MapSheet sheet)
    {
        var main = sheet.Main.Box;
        return sheet.Frames.FirstOrDefault(frame => frame.Name is not null && frame.Box.Left < main.Left + main.Width / 2) is { } inset
            ? new(inset.Box.Right + sheet.Style.Gap, main.Bottom - sheet.Style.Gap)
            : new(main.Right - ScaleBar.LengthMm(sheet.Main, ScaleRoom(sheet)), main.Bottom + sheet.Style.Gap + SheetStyle.LineMm(sheet.Style.SmallPoints));
    }
}
