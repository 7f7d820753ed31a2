using SkiaSharp;

namespace RangeMap.Maps;

/// <summary>Draws on a canvas of SkiaSharp, which makes PNG and PDF of it.</summary>
internal sealed class SkiaPen(SKCanvas canvas) : IMapPen
{
    private Paint _paint = new(null);

    public void StartGroup(string name, Paint paint, PaperBox? clip = null)
    {
        _paint = paint;
        canvas.Save();
        if (clip is { } box)
            canvas.ClipRect(new((float)box.Left, (float)box.Top, (float)box.Right, (float)box.Bottom));
    }

    public void EndGroup() => canvas.Restore();

    public void Shape(IReadOnlyList<Strand> strands, string? tip = null)
    {
        using var path = PathOf(strands);
        if (_paint.Fill is { } fill)
        {
            using var paint = new SKPaint { Color = SKColor.Parse(fill), IsAntialias = true };
            canvas.DrawPath(path, paint);
        }

        if (_paint.Stroke is { } stroke)
        {
            using var dash = _paint.DashMm > 0 ? SKPathEffect.CreateDash([(float)_paint.DashMm, (float)_paint.DashMm], 0) : null;
            using var paint = new SKPaint
            {
                Color = SKColor.Parse(stroke), IsAntialias = true, IsStroke = true, StrokeWidth = (float)_paint.WidthMm, StrokeJoin = SKStrokeJoin.Round, PathEffect = dash,
            };
            canvas.DrawPath(path, paint);
        }
    }

    public void Text(PaperPoint at, string text, TextStyle style)
    {
        using var font = MapFonts.Font(style.Face, (float)style.SizeMm);
        var align = style.Anchor switch { TextAnchor.Middle => SKTextAlign.Center, TextAnchor.End => SKTextAlign.Right, _ => SKTextAlign.Left };
        if (style.Halo is { } halo)
        {
            using var edge = new SKPaint
            {
                Color = SKColor.Parse(halo), IsAntialias = true, IsStroke = true, StrokeWidth = (float)(style.SizeMm * TextStyle.HaloShare), StrokeJoin = SKStrokeJoin.Round,
            };
            canvas.DrawText(text, (float)at.X, (float)at.Y, align, font, edge);
        }

        using var paint = new SKPaint { Color = SKColor.Parse(style.Colour), IsAntialias = true };
        canvas.DrawText(text, (float)at.X, (float)at.Y, align, font, paint);
    }

    private static SKPath PathOf(IReadOnlyList<Strand> strands)
    {
        using var builder = new SKPathBuilder { FillType = SKPathFillType.EvenOdd };
        foreach (var (points, closed) in strands)
        {
            builder.MoveTo((float)points[0].X, (float)points[0].Y);
            for (var i = 1; i < points.Count; i++)
                builder.LineTo((float)points[i].X, (float)points[i].Y);
            if (closed)
                builder.Close();
        }

        return builder.Detach();
    }
}
