namespace RangeMap.Maps;

/// <summary>The drawing of a printed map, the same for every format: from the land at the bottom to the words on top.</summary>
internal static class MapDrawing
{
    private const double FrameMm = 0.15, RegionMm = 0.4;

    public static void Draw(IMapPen pen, PrintedMap map, MapSheet sheet, BaseMap geography, PrintInk ink)
    {
        var inks = MapInks.Of(ink);
        DrawHeads(pen, sheet);
        var squares = map.Squares.ToLookup(square => sheet.Frames.FirstOrDefault(frame => frame.Shows(square.Square)));
        var insets = sheet.Frames.Where(frame => frame.Name is not null).Select(frame => frame.Box).ToList();
        // The main map first: the insets lie upon its sea.
        foreach (var (frame, index) in sheet.Frames.Reverse().Select((frame, i) => (frame, i)))
            DrawFrame(pen, map, squares[frame], sheet, geography, inks, frame, index, frame.Name is null ? insets : []);
        ScaleBar.Draw(pen, sheet.Main, ScaleAt(sheet), sheet.Main.Box.Width / 6, sheet.Style);
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
        IMapPen pen, PrintedMap map, IEnumerable<PrintedSquare> squares, MapSheet sheet, BaseMap geography, MapInks inks, MapFrame frame, int index, IReadOnlyList<PaperBox> insets)
    {
        var land = geography.On(frame.Plane);
        if (frame.Name is not null)
            DrawBox(pen, $"inset-{index}", frame.Box, new(MapInks.Paper));
        LandDrawing.DrawLand(pen, land, frame, inks, index);
        GridDrawing.DrawLines(pen, geography.Lettered, frame, inks, index);
        SquareDrawing.Draw(pen, map, squares, frame, sheet.MarkMm, index);
        LandDrawing.DrawLines(pen, land, frame, inks, index);
        DrawRegion(pen, map.Area, frame, inks);
        GridDrawing.DrawLetters(pen, geography.Lettered, frame, inks, sheet.Style, insets);
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

    private static void DrawRegion(IMapPen pen, MapArea area, MapFrame frame, MapInks inks)
    {
        if (area.Outline.Count == 0)
            return;
        var rings = area.Outline.SelectMany(polygon => polygon.Rings)
            .SelectMany(ring => BoxClip.Line([.. LineThinning.Thin(frame.On(Array.ConvertAll(ring, frame.Plane.FromLatLon)), 0.04)], frame.Box))
            .Select(line => new Strand(line, false)).ToList();
        pen.StartGroup("region", new(null, inks.Coast, RegionMm), frame.Box);
        pen.Shape(rings);
        pen.EndGroup();
    }

    private static void DrawBox(IMapPen pen, string name, PaperBox box, Paint paint)
    {
        pen.StartGroup(name, paint);
        pen.Shape([new(box.Corners, true)]);
        pen.EndGroup();
    }

    /// <summary>Right of the inset in the lower left corner, or in that corner.</summary>
    private static PaperPoint ScaleAt(MapSheet sheet)
    {
        var main = sheet.Main.Box;
        var corner = sheet.Frames.Where(frame => frame.Name is not null && frame.Box.Left < main.Left + main.Width / 2).Select(frame => frame.Box.Right).DefaultIfEmpty(main.Left).Max();
        return new(corner + sheet.Style.Gap, main.Bottom - sheet.Style.Gap);
    }
}
