using System.Collections.Concurrent;
using SkiaSharp;

namespace RangeMap.Maps;

/// <summary>The fonts built into the program, so that a map looks the same on every machine.</summary>
internal static class MapFonts
{
    /// <summary>The family, as SVG names it.</summary>
    public const string Family = "Noto Sans";

    private static readonly ConcurrentDictionary<Face, SKTypeface> Typefaces = new();
    private static readonly ConcurrentDictionary<Face, string> WebFonts = new();

    /// <summary>The face for drawing.</summary>
    public static SKTypeface Typeface(Face face) => Typefaces.GetOrAdd(face, wanted =>
    {
        using var stream = Open(wanted, "ttf");
        return SKTypeface.FromStream(stream) ?? throw new InvalidOperationException($"The font of face {wanted} cannot be read.");
    });

    /// <summary>The face in WOFF2 form, base 64, to be put into an SVG file.</summary>
    public static string WebFont(Face face) => WebFonts.GetOrAdd(face, wanted =>
    {
        using var stream = Open(wanted, "woff2");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return Convert.ToBase64String(bytes.GetBuffer(), 0, (int)bytes.Length);
    });

    /// <summary>Width of a text, millimetres.</summary>
    public static double WidthMm(string text, Face face, double points)
    {
        // Measured large and scaled down, so that no rounding to whole units of the font size shows.
        const float size = 100;
        using var font = Font(face, size);
        return font.MeasureText(text) * points / size * TextStyle.MmPerPoint;
    }

    /// <summary>A font of a face and size, in the units of the drawing.</summary>
    public static SKFont Font(Face face, float size) => new(Typeface(face), size) { Subpixel = true, Hinting = SKFontHinting.None, Edging = SKFontEdging.Antialias };

    private static Stream Open(Face face, string form) =>
        typeof(MapFonts).Assembly.GetManifestResourceStream($"fonts/NotoSans-{face}.{form}") ?? throw new InvalidOperationException($"The program was built without the font of face {face}.");
}
