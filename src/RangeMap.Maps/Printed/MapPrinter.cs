using SkiaSharp;

namespace RangeMap.Maps;

/// <summary>Writes a map as SVG, PNG or PDF. The same map gives the same bytes: the only time in a file is that of the edition.</summary>
public static class MapPrinter
{
    private const string Language = "en-GB";

    /// <summary>Points to a millimetre, the unit of PDF.</summary>
    private const double PointsPerMm = 72 / 25.4;

    /// <summary>How hard pictures are packed, 0 to 9: beyond this they take longer and hardly shrink.</summary>
    private const int PngPacking = 4;

    /// <summary>The media type of a format.</summary>
    public static string MediaType(PrintFormat format) => format switch
    {
        PrintFormat.Svg => "image/svg+xml",
        PrintFormat.Png => "image/png",
        _ => "application/pdf",
    };

    /// <summary>The map as a file.</summary>
    /// <param name="map">The map.</param>
    /// <param name="geography">Land, borders and grids.</param>
    /// <param name="format">The format.</param>
    /// <param name="size">The paper.</param>
    /// <param name="ink">What it is printed with; the classes of the map must have been given the marks of the same ink.</param>
    public static byte[] Print(PrintedMap map, BaseMap geography, PrintFormat format, PrintSize size, PrintInk ink)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(geography);
        var sheet = new MapSheet(map, size, ink);
        return format switch
        {
            PrintFormat.Svg => Svg(map, sheet, geography, ink),
            PrintFormat.Png => Png(map, sheet, geography, ink),
            _ => Pdf(map, sheet, geography, ink),
        };
    }

    private static byte[] Svg(PrintedMap map, MapSheet sheet, BaseMap geography, PrintInk ink)
    {
        using var output = new MemoryStream();
        using (var pen = new SvgPen(output, sheet.Style.Width, sheet.Height, Title(map), string.Join(' ', map.Source)))
        {
            pen.StartGroup("paper", new(MapInks.Paper));
            pen.Shape([new(new PaperBox(0, 0, sheet.Style.Width, sheet.Height).Corners, true)]);
            pen.EndGroup();
            MapDrawing.Draw(pen, map, sheet, geography, ink);
        }

        return output.ToArray();
    }

    private static byte[] Png(PrintedMap map, MapSheet sheet, BaseMap geography, PrintInk ink)
    {
        var scale = sheet.Style.Dpi / 25.4;
        var (width, height) = ((int)Math.Round(sheet.Style.Width * scale), (int)Math.Round(sheet.Height * scale));
        using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        surface.Canvas.Clear(SKColor.Parse(MapInks.Paper));
        MapDrawing.Draw(new SkiaPen(surface.Canvas, scale), map, sheet, geography, ink);
        using var pixels = surface.PeekPixels();
        using var png = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.NoFilters, PngPacking))
            ?? throw new InvalidOperationException("The picture could not be encoded.");
        return png.ToArray();
    }

    private static byte[] Pdf(PrintedMap map, MapSheet sheet, BaseMap geography, PrintInk ink)
    {
        using var output = new MemoryStream();
        var time = map.EditionMadeAt.UtcDateTime;
        var properties = new SKDocumentPdfMetadata
        {
            Title = Title(map), Author = map.Publisher, Subject = map.Subject, Creator = "RangeMap", Creation = time, Modified = time,
        };
        using (var document = SKDocument.CreatePdf(output, properties))
        {
            var canvas = document.BeginPage((float)(sheet.Style.Width * PointsPerMm), (float)(sheet.Height * PointsPerMm));
            MapDrawing.Draw(new SkiaPen(canvas, PointsPerMm), map, sheet, geography, ink);
            document.EndPage();
            document.Close();
        }

        return PdfLanguage.Add(output.GetBuffer().AsSpan(0, (int)output.Length), Language);
    }

    private static string Title(PrintedMap map) => map.VernacularName is { } name ? $"{map.PlainName} ({name}). {map.Subject}" : $"{map.PlainName}. {map.Subject}";
}
