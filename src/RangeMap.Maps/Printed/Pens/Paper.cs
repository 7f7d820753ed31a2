namespace RangeMap.Maps;

/// <summary>A place on the paper, millimetres from its upper left corner.</summary>
internal readonly record struct PaperPoint(double X, double Y);

/// <summary>A box on the paper, millimetres.</summary>
internal readonly record struct PaperBox(double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;

    public double Bottom => Top + Height;

    public PaperPoint[] Corners => [new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)];

    public bool Contains(PaperPoint point) => point.X >= Left && point.X < Right && point.Y >= Top && point.Y < Bottom;

    public bool Overlaps(PaperBox other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public PaperBox Shrunk(double margin) => new(Left + margin, Top + margin, Width - 2 * margin, Height - 2 * margin);
}

/// <summary>A run of points; a closed one is joined from its last to its first.</summary>
internal readonly record struct Strand(IReadOnlyList<PaperPoint> Points, bool Closed);

/// <summary>How shapes are painted. Where strands of one shape overlap, every second layer is a hole (even-odd rule).</summary>
/// <param name="Fill">Colour as #rrggbb; null for none.</param>
/// <param name="Stroke">Colour of the line; null for none.</param>
/// <param name="WidthMm">Width of the line.</param>
/// <param name="DashMm">Length of dashes and of the gaps between them; 0 for a whole line.</param>
internal sealed record Paint(string? Fill, string? Stroke = null, double WidthMm = 0, double DashMm = 0);
