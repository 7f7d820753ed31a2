using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>
/// Where everything stands on the paper. From the top: name, everyday name and subject; the map; the legend, beside the map over the sea where there is
/// room, else below it; the source at the foot.
/// </summary>
internal sealed class MapSheet
{
    private const double LeastMarkMm = 0.5, LeastBlackMarkMm = 0.9;

    /// <summary>On the map of all islands, the sea east of Scotland: where the legend finds room on a page, metres.</summary>
    private static readonly PlaneBounds OpenSea = new(476_000, 540_000, 665_000, 868_000);

    public MapSheet(PrintedMap map, PrintSize size, PrintInk ink)
    {
        Style = SheetStyle.Of(size);
        var width = Style.Width - 2 * Style.Margin;
        Heads =
        [
            TextBlock.OfName(map.Name, Style.TitlePoints, width),
            .. map.VernacularName is { } name ? (TextBlock[])[TextBlock.Of(name, Face.Bold, Style.TextPoints * 1.2, width)] : [],
            TextBlock.Of(map.Subject, Face.Regular, Style.TextPoints, width),
        ];
        Source = TextBlock.Of(map.Source, Face.Regular, Style.SmallPoints, width);
        MapTop = Style.Margin + Heads.Sum(head => head.Height) + Style.Gap;

        // First with the legend beside the map; where it does not fit there, with the legend below.
        var beside = map.Area.Insets.Count > 0 && size == PrintSize.Page ? Framed(map.Area, width, 0) : null;
        if (beside is not null && SeaBox(beside, map, ink) is { } sea)
            (Frames, LegendAt, Legend) = (beside, new(sea.Left, sea.Top), LegendFor(map, ink, sea.Width, beside));
        else
            (Frames, LegendAt, Legend) = Below(map, ink, width);
        Main = Frames[^1];
        MarkMm = Math.Max((int)map.Side * Main.MmPerMetre, LeastOf(ink));
        var foot = Math.Max(Main.Box.Bottom, LegendAt.Y + Legend.Height) + Style.Gap;
        Height = Style.Height ?? foot + Source.Height + Style.Margin;
        SourceTop = Style.Height is null ? foot : Height - Style.Margin - Source.Height;
    }

    public SheetStyle Style { get; }

    public double Height { get; }

    /// <summary>Name, everyday name and subject.</summary>
    public IReadOnlyList<TextBlock> Heads { get; }

    public double MapTop { get; }

    /// <summary>The insets, then the main map.</summary>
    public IReadOnlyList<MapFrame> Frames { get; }

    public MapFrame Main { get; }

    public LegendBlock Legend { get; }

    public PaperPoint LegendAt { get; }

    /// <summary>The legend with a little white round it.</summary>
    public PaperBox LegendBox => new PaperBox(LegendAt.X, LegendAt.Y, Legend.Width, Legend.Height).Shrunk(-1);

    public TextBlock Source { get; }

    public double SourceTop { get; }

    /// <summary>Side of a square as drawn.</summary>
    public double MarkMm { get; }

    private (IReadOnlyList<MapFrame>, PaperPoint, LegendBlock) Below(PrintedMap map, PrintInk ink, double width)
    {
        var legendWidth = Math.Min(width, LegendBlock.NaturalWidth(map, Style));
        var frames = Framed(map.Area, width, LegendFor(map, ink, legendWidth, null).Height + Style.Gap);
        return (frames, new(Style.Margin, frames[^1].Box.Bottom + Style.Gap), LegendFor(map, ink, legendWidth, frames));
    }

    private LegendBlock LegendFor(PrintedMap map, PrintInk ink, double width, IReadOnlyList<MapFrame>? frames)
    {
        // Before the scale is known, room is kept for the note.
        var drawnLarger = frames is null || (int)map.Side * frames[^1].MmPerMetre < LeastOf(ink);
        return new(map, Style, width, drawnLarger ? "Squares are drawn larger than they are." : null);
    }

    /// <summary>The box over the sea that takes the legend; null where it is too small.</summary>
    private PaperBox? SeaBox(IReadOnlyList<MapFrame> frames, PrintedMap map, PrintInk ink)
    {
        var main = frames[^1];
        var (topLeft, bottomRight) = (main.On(new EastNorth(OpenSea.West, OpenSea.North)), main.On(new EastNorth(OpenSea.East, OpenSea.South)));
        var box = new PaperBox(topLeft.X, topLeft.Y, main.Box.Right - 2 - topLeft.X, bottomRight.Y - topLeft.Y);
        return LegendFor(map, ink, box.Width, frames).Height <= box.Height ? box : null;
    }

    /// <summary>The insets and the main map, as wide as the paper allows and as high as they need or there is room for.</summary>
    private IReadOnlyList<MapFrame> Framed(MapArea area, double width, double below)
    {
        var most = Style.Height is { } height ? height - Style.Margin - Source.Height - Style.Gap - below - MapTop : Style.MostMapHeight;
        var high = Math.Min(Math.Min(most, Style.MostMapHeight), width * area.Bounds.Height() / area.Bounds.Width());
        var box = new PaperBox(Style.Margin, MapTop, width, Math.Max(high, width / 4));
        var main = new MapFrame(area.Plane, Filling(area.Bounds, box), box, null);
        return [.. area.Insets.Select(inset => InsetOf(inset, main)), main];
    }

    private MapFrame InsetOf(MapInset inset, MapFrame main)
    {
        var (wide, high) = (inset.Bounds.Width() * main.MmPerMetre, inset.Bounds.Height() * main.MmPerMetre);
        var edge = Style.Gap / 2;
        var box = inset.AtTop
            ? new PaperBox(main.Box.Right - edge - wide, main.Box.Top + edge, wide, high)
            : new PaperBox(main.Box.Left + edge, main.Box.Bottom - edge - high, wide, high);
        return new(inset.Plane, inset.Bounds, box, inset.Name);
    }

    /// <summary>The bounds made wider or higher to the proportions of the box.</summary>
    private static PlaneBounds Filling(PlaneBounds bounds, PaperBox box)
    {
        var metresPerMm = Math.Max(bounds.Width() / box.Width, bounds.Height() / box.Height);
        var middle = bounds.Middle();
        double east = box.Width * metresPerMm / 2, north = box.Height * metresPerMm / 2;
        return new(middle.Easting - east, middle.Northing - north, middle.Easting + east, middle.Northing + north);
    }

    private static double LeastOf(PrintInk ink) => ink == PrintInk.Black ? LeastBlackMarkMm : LeastMarkMm;
}
