using SkiaSharp;

namespace RangeMap.Maps;

/// <summary>Draws on a canvas of SkiaSharp, which makes PNG and PDF of it.</summary>
/// <remarks>The canvas is scaled to hundredths of a millimetre, so that places are whole numbers: a PDF is half as long by it.</remarks>
internal sealed class SkiaPen : IMapPen
{
    private const float UnitsPerMm = 100;

    private readonly SKCanvas _canvas;

    private Paint _paint = new(null);

    /// <summary>Begins to draw.</summary>
    /// <param name="canvas">The canvas; its scale is changed.</param>
    /// <param name="unitsPerMm">Units of the canvas to a millimetre.</param>
    public SkiaPen(SKCanvas canvas, double unitsPerMm)
    {
        _canvas = canvas;
        _canvas.Scale((float)(unitsPerMm / UnitsPerMm));
    }

    public void StartGroup(string name, Paint paint, PaperBox? clip = null)
    {
        _paint = paint;
        _canvas.Save();
        if (clip is { } box)
            _canvas.ClipRect(new(Units(box.Left), Units(box.Top), Units(box.Right), Units(box.Bottom)));
    }

    public void EndGroup() => _canvas.Restore();

    public void Shape(IReadOnlyList<Strand> strands, string? tip = null)
    {
        using var path = PathOf(strands);
        if (_paint.Fill is { } fill)
        {
            using var paint = new SKPaint { Color = SKColor.Parse(fill), IsAntialias = true };
            _canvas.DrawPath(path, paint);
        }

        if (_paint.Stroke is { } stroke)
        {
            using var dash = _paint.DashMm > 0 ? SKPathEffect.CreateDash([Units(_paint.DashMm), Units(_paint.DashMm)], 0) : null;
            using var paint = new SKPaint
            {
                Color = SKColor.Parse(stroke), IsAntialias = true, IsStroke = true, StrokeWidth = Units(_paint.WidthMm), StrokeJoin = SKStrokeJoin.Round, PathEffect = dash,
            };
            _canvas.DrawPath(path, paint);
        }
    }

    public void Text(PaperPoint at, string text, TextStyle style)
    {
        using var font = MapFonts.Font(style.Face, Units(style.SizeMm));
        var align = style.Anchor switch { TextAnchor.Middle => SKTextAlign.Center, TextAnchor.End => SKTextAlign.Right, _ => SKTextAlign.Left };
        if (style.Halo is { } halo)
        {
            using var edge = new SKPaint
            {
                Color = SKColor.Parse(halo), IsAntialias = true, IsStroke = true, StrokeWidth = Units(style.SizeMm * TextStyle.HaloShare), StrokeJoin = SKStrokeJoin.Round,
            };
            // As outlines, so that the text stands once in a PDF.
            var left = Units(at.X) - font.MeasureText(text) * (align switch { SKTextAlign.Center => 0.5f, SKTextAlign.Right => 1, _ => 0 });
            using var outlines = font.GetTextPath(text, new SKPoint(left, Units(at.Y)));
            _canvas.DrawPath(outlines, edge);
        }

        using var paint = new SKPaint { Color = SKColor.Parse(style.Colour), IsAntialias = true };
        _canvas.DrawText(text, Units(at.X), Units(at.Y), align, font, paint);
    }

    private static float Units(double mm) => (float)Math.Round(mm * UnitsPerMm);

    private static SKPath PathOf(IReadOnlyList<Strand> strands)
    {
        using var builder = new SKPathBuilder { FillType = SKPathFillType.EvenOdd };
        foreach (var (points, closed) in strands)
        {
            builder.MoveTo(Units(points[0].X), Units(points[0].Y));
            for (var i = 1; i < points.Count; i++)
                builder.LineTo(Units(points[i].X), Units(points[i].Y));
            if (closed)
                builder.Close();
        }

        return builder.Detach();
    }
}
