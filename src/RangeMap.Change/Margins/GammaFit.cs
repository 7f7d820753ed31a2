using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>A gamma distribution fitted by maximum likelihood (docs/methods/margins.md, eq. 6).</summary>
/// <param name="Shape">k, more than 0.</param>
/// <param name="Scale">theta, in the unit of the data.</param>
public readonly record struct GammaFit(double Shape, double Scale)
{
    /// <summary>Fits positive numbers by their mean and the mean of their logarithms; null where they are all the same.</summary>
    /// <remarks>ln k - digamma(k) = ln(mean x) - mean(ln x), solved by Newton's method from the approximation of Minka (2002).</remarks>
    public static GammaFit? Of(double mean, double meanLog)
    {
        var s = Math.Log(mean) - meanLog;
        if (!(s > 1e-9) || !double.IsFinite(s))
            return null;
        var k = (3 - s + Math.Sqrt((s - 3) * (s - 3) + 24 * s)) / (12 * s);
        for (var i = 0; i < 50; i++)
        {
            // 1 / k is updated, which converges from either side (Minka 2002, Estimating a gamma distribution).
            var step = (Math.Log(k) - SpecialFunctions.DiGamma(k) - s) / (k * k * (1 / k - TriGamma(k)));
            var next = 1 / (1 / k + step);
            if (Math.Abs(next - k) < 1e-12 * k)
                return new(next, mean / next);
            k = next;
        }

        return new(k, mean / k);
    }

    /// <summary>The number below which a share of the distribution lies.</summary>
    public double Quantile(double share) => Gamma.InvCDF(Shape, 1 / Scale, share);

    /// <summary>Second derivative of the logarithm of the gamma function: recurrence up to 6, then its asymptotic series.</summary>
    internal static double TriGamma(double x)
    {
        var sum = 0.0;
        for (; x < 6; x++)
            sum += 1 / (x * x);
        var z = 1 / (x * x);
        return sum + 1 / x + z / 2 + z / x * (1.0 / 6 - z * (1.0 / 30 - z * (1.0 / 42 - z / 30)));
    }
}
