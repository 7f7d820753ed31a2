using MathNet.Numerics;

namespace RangeMap.Change;

/// <summary>How single squares' arrivals scatter round the line of a <see cref="CensoredLine"/>.</summary>
public enum ArrivalErrors
{
    /// <summary>Normal.</summary>
    Gaussian,

    /// <summary>Logistic: heavier tails, so that single odd squares pull less.</summary>
    Logistic,
}

/// <summary>The standard distributions behind <see cref="ArrivalErrors"/>, both symmetric about 0.</summary>
internal static class ErrorCurve
{
    private const double RootTwo = 1.4142135623730951, RootTwoPi = 2.5066282746310002;

    /// <summary>Chance between two values, as exact in the upper tail as in the lower.</summary>
    /// <param name="shape">Which distribution.</param>
    /// <param name="low">Lower value, may be negative infinity.</param>
    /// <param name="high">Upper value, may be infinity; not below <paramref name="low"/>.</param>
    internal static double Between(ArrivalErrors shape, double low, double high) => low > 0
        ? Below(shape, -low) - Below(shape, -high)
        : Below(shape, high) - Below(shape, low);

    /// <summary>Density and its derivative; both 0 at the infinities.</summary>
    internal static (double Density, double Slope) Density(ArrivalErrors shape, double z)
    {
        if (double.IsInfinity(z))
            return (0, 0);
        if (shape == ArrivalErrors.Gaussian)
        {
            var density = Math.Exp(-z * z / 2) / RootTwoPi;
            return (density, -z * density);
        }

        var tail = Math.Exp(-Math.Abs(z));
        var logistic = tail / ((1 + tail) * (1 + tail));
        return (logistic, -Math.Sign(z) * logistic * (1 - tail) / (1 + tail));
    }

    private static double Below(ArrivalErrors shape, double z) => shape == ArrivalErrors.Gaussian
        ? double.IsPositiveInfinity(z) ? 1 : double.IsNegativeInfinity(z) ? 0 : SpecialFunctions.Erfc(-z / RootTwo) / 2
        : 1 / (1 + Math.Exp(-z));
}
