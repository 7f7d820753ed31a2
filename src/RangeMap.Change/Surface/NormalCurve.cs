namespace RangeMap.Change;

/// <summary>The standard normal distribution, quick enough for the inside of a loop.</summary>
internal static class NormalCurve
{
    /// <summary>Beyond this hardly one value in 10^15 lies, so that a sum of a few chances does not change by it.</summary>
    public const double Far = 8;

    /// <summary>Beyond this the chance is too small for a number.</summary>
    public const double Farthest = 37;

    // From here on Laplace's continued fraction (Abramowitz and Stegun 1964, 26.2.14) is right in proportion too, which the polynomial is not.
    private const double Tail = 4;

    /// <summary>Chance of a value below z, to 7.5e-8 (Abramowitz and Stegun 1964, 26.2.17).</summary>
    public static double Below(double z)
    {
        if (Math.Abs(z) > Far)
            return z < 0 ? 0 : 1;
        var (beyond, _) = BeyondAndDensity(Math.Abs(z));
        return z < 0 ? beyond : 1 - beyond;
    }

    /// <summary>Chance of a value beyond z, which is 0 or more, and the density at z, for little more than either.</summary>
    public static (double Beyond, double Density) BeyondAndDensity(double z)
    {
        var density = 0.3989422804014327 * Math.Exp(-z * z / 2);
        if (z > Tail)
            return (density / (z + 1 / (z + 2 / (z + 3 / (z + 4 / (z + 5 / z))))), density);
        var t = 1 / (1 + 0.2316419 * z);
        return (density * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429)))), density);
    }
}
