using System.Globalization;

namespace RangeMap.Maps;

/// <summary>
/// A colour by lightness, chroma and hue in a space where equal steps look about equally large: B. Ottosson, "A perceptual
/// color space for image processing" (2020), whose matrices are used here.
/// </summary>
/// <param name="Lightness">From 0, black, to 1, white.</param>
/// <param name="Chroma">From 0, grey; what a screen can show ends at about 0.3.</param>
/// <param name="HueDegrees">Red is about 30, yellow 110, green 140, blue 265.</param>
internal readonly record struct OklchColour(double Lightness, double Chroma, double HueDegrees)
{
    private const double ChromaStep = 0.002;

    /// <summary>The colour as #rrggbb (sRGB). Where a screen cannot show it, the chroma is lowered until it can.</summary>
    public string ToHex()
    {
        var colour = this;
        while (colour.Chroma > 0 && !IsShowable(colour.ToLinear()))
            colour = colour with { Chroma = Math.Max(0, colour.Chroma - ChromaStep) };
        var (r, g, b) = colour.ToLinear();
        return string.Create(CultureInfo.InvariantCulture, $"#{Byte(r):x2}{Byte(g):x2}{Byte(b):x2}");
    }

    /// <summary>The colour at a share of the way to another, along the hues between.</summary>
    public OklchColour Towards(OklchColour other, double share) => new(
        Lightness + (other.Lightness - Lightness) * share,
        Chroma + (other.Chroma - Chroma) * share,
        HueDegrees + (other.HueDegrees - HueDegrees) * share);

    private (double R, double G, double B) ToLinear()
    {
        var (sin, cos) = Math.SinCos(HueDegrees * Math.PI / 180);
        double a = Chroma * cos, b = Chroma * sin;
        var l = Cube(Lightness + 0.3963377774 * a + 0.2158037573 * b);
        var m = Cube(Lightness - 0.1055613458 * a - 0.0638541728 * b);
        var s = Cube(Lightness - 0.0894841775 * a - 1.2914855480 * b);
        return (
            4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
            -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
            -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s);
    }

    private static bool IsShowable((double R, double G, double B) linear)
    {
        const double slack = 1e-4;
        return Math.Min(linear.R, Math.Min(linear.G, linear.B)) >= -slack && Math.Max(linear.R, Math.Max(linear.G, linear.B)) <= 1 + slack;
    }

    /// <summary>The sRGB transfer curve (IEC 61966-2-1), then a byte.</summary>
    private static int Byte(double linear)
    {
        var value = Math.Clamp(linear, 0, 1);
        var encoded = value <= 0.0031308 ? 12.92 * value : 1.055 * Math.Pow(value, 1 / 2.4) - 0.055;
        return (int)Math.Round(encoded * 255);
    }

    private static double Cube(double x) => x * x * x;
}
