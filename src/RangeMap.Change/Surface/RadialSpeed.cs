using MathNet.Numerics.LinearAlgebra;

namespace RangeMap.Change;

/// <summary>Speed away from the origin in a part of the country or a span of years (docs/methods/arrival-surface.md, eq. 12).</summary>
public static class RadialSpeed
{
    private const int LeastSquares = 10;
    private const double LeastKm = 1;

    /// <summary>
    /// Kilometres a year: the inverse of the mean slope of the arrival surface along the way from the origin. Null for fewer than ten squares, and where the mean slope cannot be told from 0 or
    /// below: the speed is then not measurable.
    /// </summary>
    /// <param name="fit">The model.</param>
    /// <param name="squares">Indices of the squares of the part.</param>
    public static (double KmPerYear, Interval Interval, int Squares)? Of(ArrivalFit fit, IReadOnlyList<int> squares)
    {
        // At the origin itself no direction leads away from it.
        var used = squares.Where(i => PlanePoint.Km(At(fit, i), fit.Origin) >= LeastKm).ToList();
        if (used.Count < LeastSquares)
            return null;
        var weights = Vector<double>.Build.Dense(fit.Surface.Basis.Count);
        foreach (var square in used)
        {
            var (place, km) = (At(fit, square), PlanePoint.Km(At(fit, square), fit.Origin));
            weights += fit.Surface.SlopeWeights(place, (place.X - fit.Origin.X) / km, (place.Y - fit.Origin.Y) / km) / used.Count;
        }

        var slope = weights.DotProduct(fit.Surface.Weights);
        var error = Math.Sqrt(Math.Max(0, weights * (fit.Surface.Covariance * weights)));
        var (low, high) = (slope - 1.96 * error, slope + 1.96 * error);
        return low > 0 ? (1 / slope, new(1 / high, 1 / low), used.Count) : null;
    }

    private static PlanePoint At(ArrivalFit fit, int square) => new(fit.Sites[square].X, fit.Sites[square].Y);
}
