using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace RangeMap.Change;

/// <summary>A gamma distribution fitted by maximum likelihood (docs/methods/margins.md, eq. 7).</summary>
/// <param name="Shape">k.</param>
/// <param name="Scale">theta, in the unit of the distances.</param>
internal readonly record struct GammaFit(double Shape, double Scale)
{
    /// <summary>Below this difference of logarithms all distances are the same for any purpose, and k runs to infinity.</summary>
    internal const double LeastSpread = 1e-7;

    /// <summary>Fits to distances.</summary>
    /// <param name="distances">At least one, all more than 0.</param>
    internal static GammaFit To(ReadOnlySpan<double> distances)
    {
        var (sum, logs) = (0.0, 0.0);
        foreach (var distance in distances)
        {
            sum += distance;
            logs += Math.Log(distance);
        }

        var mean = sum / distances.Length;
        var shape = ShapeOf(Math.Log(mean) - logs / distances.Length);
        return new(shape, mean / shape);
    }

    /// <summary>The solution k of ln k - digamma(k) = s.</summary>
    /// <param name="spread">s, the logarithm of the mean less the mean of the logarithms.</param>
    internal static double ShapeOf(double spread)
    {
        var s = Math.Max(spread, LeastSpread);
        // Within 1.5 % of the solution for every s (Minka 2002), so the bracket holds it. The search is for k by this first guess, and the
        // two sides are compared by their ratio, because s itself may be tiny.
        var near = (3 - s + Math.Sqrt((s - 3) * (s - 3) + 24 * s)) / (12 * s);
        return near * (Brent.TryFindRoot(u => (Math.Log(u * near) - SpecialFunctions.DiGamma(u * near)) / s - 1, 0.9, 1.1, 1e-11, 200, out var times) ? times : 1);
    }

    /// <summary>A quantile, in the unit of the distances.</summary>
    /// <param name="share">In (0, 1).</param>
    internal double Quantile(double share) => Scale * Gamma.InvCDF(Shape, 1, share);
}
