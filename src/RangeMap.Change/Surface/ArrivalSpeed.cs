using MathNet.Numerics.LinearAlgebra;

namespace RangeMap.Change;

/// <summary>One speed for the whole spread from the arrival surface, with its interval (docs/methods/arrival-surface.md, eq. 8 and 9).</summary>
public static class ArrivalSpeed
{
    /// <summary>
    /// Kilometres a year: the inverse of the slope of the surface's arrival year on distance from the origin, over the squares that were probably reached within the years of
    /// visits. Null where the slope cannot be told from 0: the speed is then not measurable.
    /// </summary>
    public static (double KmPerYear, Interval Interval, int Squares)? Of(ArrivalFit fit)
    {
        var last = fit.LastVisit;
        var used = Enumerable.Range(0, fit.Sites.Count).Where(i => fit.Reached(i, last) >= 0.5).ToArray();
        if (used.Length < fit.Options.LeastSquares)
            return null;
        var slopes = SlopeWeights(fit, used);
        var slope = slopes.DotProduct(fit.Surface.Weights);
        var error = Math.Sqrt(Math.Max(0, slopes * (fit.Surface.Covariance * slopes)));
        var (low, high) = (slope - 1.96 * error, slope + 1.96 * error);
        return low > 0 ? (1 / slope, new(1 / high, 1 / low), used.Length) : null;
    }

    /// <summary>The slope is linear in the surface's weights: this is its gradient.</summary>
    private static Vector<double> SlopeWeights(ArrivalFit fit, int[] used)
    {
        var distances = used.Select(i => PlanePoint.Km(new(fit.Sites[i].X, fit.Sites[i].Y), fit.Origin)).ToArray();
        var mean = distances.Average();
        var squares = distances.Sum(d => (d - mean) * (d - mean));
        var gradient = Vector<double>.Build.Dense(fit.Surface.Basis.Count);
        var row = new double[fit.Surface.Basis.Count];
        for (var k = 0; k < used.Length; k++)
        {
            fit.Surface.Basis.Fill(new(fit.Sites[used[k]].X, fit.Sites[used[k]].Y), row);
            var weight = (distances[k] - mean) / squares;
            for (var j = 0; j < row.Length; j++)
                gradient[j] += weight * row[j];
        }

        return gradient;
    }
}
