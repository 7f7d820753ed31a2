namespace RangeMap.Change;

/// <summary>The standard normal distribution, quick enough for the inside of a loop.</summary>
internal static class NormalCurve
{
    private const double Farthest = 8;

    /// <summary>Chance of a value below z, to 7.5e-8 (Abramowitz and Stegun 1964, 26.2.17).</summary>
    public static double Below(double z) => BelowAndDensity(z).Below;

    /// <summary>Chance of a value below z and the density at z, for little more than either.</summary>
    public static (double Below, double Density) BelowAndDensity(double z)
    {
        if (z < -Farthest)
            return (0, 0);
        if (z > Farthest)
            return (1, 0);
        var density = 0.3989422804014327 * Math.Exp(-z * z / 2);
        var t = 1 / (1 + 0.2316419 * Math.Abs(z));
        var tail = density * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return (z >= 0 ? 1 - tail : tail, density);
    }
}
