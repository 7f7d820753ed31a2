using System.Globalization;

namespace RangeMap.Maps.Tests;

/// <summary>Measures colours, apart from the code that makes them.</summary>
internal static class ColourScience
{
    /// <summary>
    /// How linear sRGB looks without one kind of cone: Machado, Oliveira and Fernandes, "A physiologically-based model for simulation of
    /// color vision deficiency" (2009), severity 1.0. The numbers are from memory, not verified; a test checks that grey stays grey.
    /// </summary>
    public static readonly IReadOnlyDictionary<string, double[][]> Vision = new Dictionary<string, double[][]>
    {
        ["usual"] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]],
        ["without red cones"] = [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
        ["without green cones"] = [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
        ["without blue cones"] = [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
    };

    public static double[] Linear(string hex) => [.. Enumerable.Range(0, 3).Select(i =>
    {
        var c = int.Parse(hex.AsSpan(1 + 2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    })];

    /// <summary>WCAG 2.1, "contrast ratio" and "relative luminance".</summary>
    public static double Contrast(string a, string b)
    {
        double[] luminances = [Luminance(a), Luminance(b)];
        return (luminances.Max() + 0.05) / (luminances.Min() + 0.05);
    }

    public static double[] Seen(double[] linear, double[][] vision) =>
        [.. vision.Select(row => Math.Clamp(row.Zip(linear, (m, c) => m * c).Sum(), 0, 1))];

    /// <summary>Oklab (Ottosson 2020): lightness 0 to 1 and two axes of colour.</summary>
    public static double[] Lab(double[] linear)
    {
        var (r, g, b) = (linear[0], linear[1], linear[2]);
        var l = Math.Cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
        var m = Math.Cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
        var s = Math.Cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
        return
        [
            0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
            1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
            0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s,
        ];
    }

    public static double Distance(double[] a, double[] b) => Math.Sqrt(a.Zip(b, (x, y) => (x - y) * (x - y)).Sum());

    private static double Luminance(string hex)
    {
        var linear = Linear(hex);
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }
}
