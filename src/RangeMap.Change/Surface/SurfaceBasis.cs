using MathNet.Numerics.LinearAlgebra;

namespace RangeMap.Change;

/// <summary>
/// The functions that make up a smooth surface: a constant, the distance from the origin, east and north, and bumps round knots with the covariance of a
/// Gaussian process (docs/methods/arrival-surface.md, eq. 2 and 3): low-rank kriging after Kammann and Wand 2003, Applied Statistics 52:1-18.
/// </summary>
internal sealed class SurfaceBasis
{
    /// <summary>Functions without a penalty: constant, distance, east, north.</summary>
    public const int Free = 4;

    private readonly PlanePoint _origin;
    private readonly PlanePoint[] _knots;
    private readonly Matrix<double> _whitening;
    private readonly double _range;
    private readonly PlanePoint _middle;

    private SurfaceBasis(PlanePoint origin, PlanePoint[] knots, double range, PlanePoint middle)
    {
        (_origin, _knots, _range, _middle) = (origin, knots, range, middle);
        var covariance = Matrix<double>.Build.Dense(knots.Length, knots.Length, (i, j) => Covariance(PlanePoint.Km(knots[i], knots[j])) + (i == j ? 1e-8 : 0));
        // With the inverse of the Cholesky factor the bumps' weights are independent and of equal variance.
        _whitening = covariance.Cholesky().Factor.Inverse().Transpose();
    }

    /// <summary>Number of functions.</summary>
    public int Count => Free + _knots.Length;

    /// <summary>Where distances are measured from.</summary>
    public PlanePoint Origin => _origin;

    /// <summary>Chooses knots that lie far from each other among the points.</summary>
    public static SurfaceBasis Of(IReadOnlyList<PlanePoint> points, PlanePoint origin, int knots)
    {
        var middle = new PlanePoint(points.Average(p => p.X), points.Average(p => p.Y));
        var chosen = FarApart(points, Math.Min(knots, points.Count / 4 + 1), middle);
        var range = Math.Max(1, points.Max(p => PlanePoint.Km(p, middle)));
        return new(origin, chosen, range, middle);
    }

    /// <summary>Values of all functions at a point.</summary>
    public void Fill(PlanePoint point, Span<double> row)
    {
        row[0] = 1;
        row[1] = PlanePoint.Km(point, _origin) / _range;
        row[2] = (point.X - _middle.X) / _range;
        row[3] = (point.Y - _middle.Y) / _range;
        var bumps = new double[_knots.Length];
        for (var k = 0; k < bumps.Length; k++)
            bumps[k] = Covariance(PlanePoint.Km(point, _knots[k]));
        for (var j = 0; j < bumps.Length; j++)
        {
            var sum = 0.0;
            for (var k = 0; k <= j; k++)
                sum += bumps[k] * _whitening[k, j];
            row[Free + j] = sum;
        }
    }

    /// <summary>Matern covariance of smoothness 3/2: once differentiable, so that the surface has a gradient.</summary>
    private double Covariance(double km)
    {
        var r = 2 * km / _range;
        return (1 + r) * Math.Exp(-r);
    }

    /// <summary>Each next knot is the point farthest from those chosen; the first is nearest the middle.</summary>
    private static PlanePoint[] FarApart(IReadOnlyList<PlanePoint> points, int count, PlanePoint middle)
    {
        var chosen = new List<PlanePoint> { points.MinBy(p => PlanePoint.Km(p, middle)) };
        var nearest = points.Select(p => PlanePoint.Km(p, chosen[0])).ToArray();
        while (chosen.Count < count)
        {
            var farthest = 0;
            for (var i = 1; i < nearest.Length; i++)
            {
                if (nearest[i] > nearest[farthest])
                    farthest = i;
            }

            if (!(nearest[farthest] > 0))
                break;
            chosen.Add(points[farthest]);
            for (var i = 0; i < nearest.Length; i++)
                nearest[i] = Math.Min(nearest[i], PlanePoint.Km(points[i], points[farthest]));
        }

        return [.. chosen];
    }
}
