using System.Globalization;

namespace RangeMap.Maps;

/// <summary>The legend: what the numbers count, a row a class with its mark, and the sum.</summary>
internal sealed class LegendBlock
{
    private const string CountFormat = "#,0";
    private const string FrontWords = "Front of the year named, fitted";
    private readonly SheetStyle _style;
    private readonly double _width;
    private readonly TextBlock _title;
    private readonly IReadOnlyList<Row> _rows;
    private readonly TextBlock? _note;

    /// <summary>Measures the legend.</summary>
    /// <param name="map">The map.</param>
    /// <param name="style">The paper.</param>
    /// <param name="width">Room for it, millimetres.</param>
    /// <param name="note">What else must be said of the marks; null for nothing.</param>
    public LegendBlock(PrintedMap map, SheetStyle style, double width, string? note)
    {
        (_style, _width) = (style, width);
        _title = TextBlock.Of(map.LegendTitle, Face.Bold, style.TextPoints, width);
        var labelWidth = width - LabelLeft - CountWidth(map, style);
        _rows =
        [
            // The newest stands first, where the eye begins.
            .. map.Classes.Select((part, i) => RowOf(part.Label, part.Mark, map.Squares.Count(square => square.Class == i), labelWidth)).Reverse(),
            .. map.Fronts.Count > 0 ? (Row[])[RowOf(FrontWords, null, null, labelWidth)] : [],
            .. map.Classes.Count != 1 ? (Row[])[RowOf("All squares", null, map.Squares.Count, labelWidth)] : [],
        ];
        _note = note is null ? null : TextBlock.Of(note, Face.Regular, style.SmallPoints, width);
        Height = _title.Height + RowGap + _rows.Sum(row => row.Height + RowGap) + (_note?.Height ?? 0);
    }

    /// <summary>Height, millimetres.</summary>
    public double Height { get; }

    /// <summary>Width, millimetres.</summary>
    public double Width => _width;

    private double MarkMm => MarkOf(_style);

    private double LabelLeft => LabelLeftOf(_style);

    private double RowGap => SheetStyle.LineMm(_style.TextPoints) * 0.16;

    /// <summary>The width at which no label breaks, millimetres.</summary>
    public static double NaturalWidth(PrintedMap map, SheetStyle style)
    {
        var labels = map.Classes.Select(part => part.Label).Append(FrontWords);
        var widest = labels.Max(label => MapFonts.WidthMm(label, Face.Regular, style.TextPoints)) + LabelLeftOf(style) + CountWidth(map, style);
        return Math.Max(widest, MapFonts.WidthMm(map.LegendTitle, Face.Bold, style.TextPoints)) + style.Gap;
    }

    /// <summary>Draws the legend.</summary>
    /// <param name="pen">The pen.</param>
    /// <param name="at">Its upper left corner.</param>
    public void Draw(IMapPen pen, PaperPoint at)
    {
        _title.Draw(pen, at, MapInks.Text);
        var top = at.Y + _title.Height + RowGap;
        for (var i = 0; i < _rows.Count; i++)
        {
            DrawRow(pen, _rows[i], new(at.X, top), i);
            top += _rows[i].Height + RowGap;
        }

        _note?.Draw(pen, new(at.X, top), MapInks.Quiet);
    }

    private void DrawRow(IMapPen pen, Row row, PaperPoint at, int index)
    {
        var top = at.Y + (SheetStyle.LineMm(_style.TextPoints) - MarkMm) / 2;
        if (row.Mark is { } mark)
        {
            pen.StartGroup(string.Create(CultureInfo.InvariantCulture, $"legend-{index}"), new(mark.Colour));
            // From the lower left corner, as squares have it.
            pen.Shape(mark.Within([new(at.X, top + MarkMm), new(at.X + MarkMm, top + MarkMm), new(at.X + MarkMm, top), new(at.X, top)], MarkMm));
            pen.EndGroup();
        }
        else if (row.Count is null)
        {
            FrontDrawing.DrawKey(pen, new(at.X, top + MarkMm / 2), MarkMm);
        }

        row.Label.Draw(pen, new(at.X + LabelLeft, at.Y), MapInks.Text);
        if (row.Count is { } count)
            pen.Text(new(at.X + _width, at.Y + _style.TextPoints * TextStyle.MmPerPoint), Text(count), new(Face.Regular, _style.TextPoints, MapInks.Text, TextAnchor.End));
    }

    private Row RowOf(string label, ClassMark? mark, int? count, double width)
    {
        var block = TextBlock.Of(label, Face.Regular, _style.TextPoints, width);
        return new(block, mark, count, block.Height);
    }

    private static double MarkOf(SheetStyle style) => SheetStyle.LineMm(style.TextPoints) * 0.72;

    private static double LabelLeftOf(SheetStyle style) => MarkOf(style) * 1.5;

    private static double CountWidth(PrintedMap map, SheetStyle style) => MapFonts.WidthMm($"  {Text(map.Squares.Count)}", Face.Regular, style.TextPoints);

    private static string Text(int count) => count.ToString(CountFormat, CultureInfo.InvariantCulture);

    private sealed record Row(TextBlock Label, ClassMark? Mark, int? Count, double Height);
}
