using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>A share of visits whose squares differ more than chance would make them.</summary>
/// <param name="Share">Visits with a find over visits, 0 to 1.</param>
/// <param name="Visits">Number of visits.</param>
/// <param name="DesignEffect">Variance over that of independent visits, at least 1: so many visits tell as much as one independent visit.</param>
/// <param name="SquaresFound">Number of squares with a find.</param>
internal readonly record struct ClusteredShare(double Share, int Visits, double DesignEffect, int SquaresFound)
{
    /// <summary>
    /// 95 % score interval at the number of visits divided by the design effect, and cut further where few squares tell of that effect
    /// (Korn and Graubard 1998).
    /// </summary>
    internal Interval Interval
    {
        get
        {
            var few = SharesOfVisits.Z / StudentT.InvCDF(0, 1, Math.Max(1, SquaresFound - 1), 0.975);
            return SharesOfVisits.Wilson(Share, Visits / DesignEffect * few * few);
        }
    }
}

/// <summary>The shares of two periods over the same squares, with squares as clusters (docs/methods/reporting-rate.md, eq. 3).</summary>
/// <param name="Squares">Number of squares.</param>
/// <param name="Before">The earlier share.</param>
/// <param name="After">The later share.</param>
/// <param name="Correlation">Of the two shares, for squares that are rich in finds in both periods.</param>
internal sealed record ClusteredShares(int Squares, ClusteredShare Before, ClusteredShare After, double Correlation)
{
    /// <summary>Computes the shares.</summary>
    /// <param name="finds">Visits with a find, by square: the earlier period at 2 i, the later at 2 i + 1.</param>
    /// <param name="visits">Visits, in the same order; at least two squares, visits in both periods.</param>
    internal static ClusteredShares Of(ReadOnlySpan<int> finds, ReadOnlySpan<int> visits)
    {
        int[] found = [0, 0], all = [0, 0], squaresFound = [0, 0];
        for (var i = 0; i < finds.Length; i++)
        {
            found[i % 2] += finds[i];
            all[i % 2] += visits[i];
            squaresFound[i % 2] += finds[i] > 0 ? 1 : 0;
        }

        double before = (double)found[0] / all[0], after = (double)found[1] / all[1];
        double vv = 0, ww = 0, vw = 0;
        for (var i = 0; i < finds.Length; i += 2)
        {
            double v = (finds[i] - before * visits[i]) / all[0], w = (finds[i + 1] - after * visits[i + 1]) / all[1];
            (vv, ww, vw) = (vv + v * v, ww + w * w, vw + v * w);
        }

        var squares = finds.Length / 2;
        var few = squares / (squares - 1.0);
        double effectBefore = Effect(few * vv, before, all[0]), effectAfter = Effect(few * ww, after, all[1]);
        return new(
            squares,
            // A share of none or all has no scatter of its own to tell how alike visits are; the other period's is taken.
            new(before, all[0], effectBefore > 0 ? effectBefore : Math.Max(1, effectAfter), squaresFound[0]),
            new(after, all[1], effectAfter > 0 ? effectAfter : Math.Max(1, effectBefore), squaresFound[1]),
            vv > 0 && ww > 0 ? Math.Clamp(vw / Math.Sqrt(vv * ww), -1, 1) : 0);
    }

    private static double Effect(double variance, double share, int visits) => share is > 0 and < 1 ? Math.Max(1, variance * visits / (share * (1 - share))) : 0;
}
