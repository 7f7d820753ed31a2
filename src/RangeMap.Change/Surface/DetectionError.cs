using MathNet.Numerics.LinearAlgebra;

namespace RangeMap.Change;

/// <summary>
/// How far the detection curve may be off, and how the surface would move with it (docs/methods/arrival-surface.md, eq. 14): where visits find less than thought, the species arrived earlier and is in more
/// squares unrecorded, so that neither can be drawn without the other.
/// </summary>
/// <param name="Aa">Variance of a.</param>
/// <param name="Ab">Covariance of a and b.</param>
/// <param name="Bb">Variance of b.</param>
/// <param name="WithA">Change of the surface's weights for each unit of a.</param>
/// <param name="WithB">Change of them for each unit of b.</param>
internal sealed record DetectionError(double Aa, double Ab, double Bb, Vector<double> WithA, Vector<double> WithB)
{
    private const double Step = 0.05;

    /// <summary>From the likelihood with the surface fitted anew at the curve and at six curves round it; null where the likelihood has no top there.</summary>
    /// <param name="at">The curve.</param>
    /// <param name="refitted">The logarithm of the likelihood and the surface's weights for a curve.</param>
    public static DetectionError? Of(DetectionCurve at, Func<DetectionCurve, (double Log, Vector<double> Weights)> refitted)
    {
        (double Log, Vector<double> Weights) At(int a, int b) => refitted(new(at.A + a * Step, at.B + b * Step));
        var (middle, aUp, aDown, bUp, bDown) = (At(0, 0).Log, At(1, 0), At(-1, 0), At(0, 1), At(0, -1));
        double aa = -Bend(aUp.Log, middle, aDown.Log), bb = -Bend(bUp.Log, middle, bDown.Log);
        var ab = -(At(1, 1).Log + At(-1, -1).Log - aUp.Log - aDown.Log - bUp.Log - bDown.Log + 2 * middle) / (2 * Step * Step);
        var determinant = aa * bb - ab * ab;
        return aa > 0 && determinant > 0
            ? new(bb / determinant, -ab / determinant, aa / determinant, (aUp.Weights - aDown.Weights) / (2 * Step), (bUp.Weights - bDown.Weights) / (2 * Step))
            : null;
    }

    /// <summary>A draw of how far the curve is off.</summary>
    public (double A, double B) Draw(ref Pcg chance)
    {
        var (p, q) = (chance.NextNormal(), chance.NextNormal());
        var a = Math.Sqrt(Aa) * p;
        return (a, Ab / Aa * a + Math.Sqrt(Math.Max(0, Bb - Ab * Ab / Aa)) * q);
    }

    private static double Bend(double up, double middle, double down) => (up - 2 * middle + down) / (Step * Step);
}
