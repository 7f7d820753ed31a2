using MathNet.Numerics.LinearAlgebra;

namespace RangeMap.Change;

/// <summary>The fitted surface of arrival years: weights of the basis with their covariance, and the scatter of single squares round it.</summary>
internal sealed record ArrivalSurface(SurfaceBasis Basis, Vector<double> Weights, Matrix<double> Covariance, double Scatter, double Roughness)
{
    /// <summary>The same surface with the uncertainty of the detection added to its own: to first order in it, as the weights move with a and b (docs/methods/arrival-surface.md, eq. 14).</summary>
    public ArrivalSurface With(DetectionError detection)
    {
        var (a, b) = (detection.WithA, detection.WithB);
        var both = a.OuterProduct(b);
        return this with { Covariance = Covariance + detection.Aa * a.OuterProduct(a) + detection.Ab * (both + both.Transpose()) + detection.Bb * b.OuterProduct(b) };
    }

    /// <summary>Mean arrival at a place and the standard error of that mean.</summary>
    public (double Mean, double Error) At(PlanePoint point)
    {
        var row = new double[Basis.Count];
        Basis.Fill(point, row);
        return At(row);
    }

    public (double Mean, double Error) At(double[] row)
    {
        double mean = 0, variance = 0;
        for (var i = 0; i < row.Length; i++)
        {
            mean += row[i] * Weights[i];
            var sum = 0.0;
            for (var j = 0; j < row.Length; j++)
                sum += Covariance[i, j] * row[j];
            variance += row[i] * sum;
        }

        return (mean, Math.Sqrt(Math.Max(0, variance)));
    }

    /// <summary>Gradient of the mean, years a kilometre, with its covariance, by central differences over a kilometre either way.</summary>
    public (double East, double North, double EastVariance, double Both, double NorthVariance) GradientAt(PlanePoint point)
    {
        const double step = 1;
        var (east, north) = (Difference(point, step, 0), Difference(point, 0, step));
        return (Weights.DotProduct(east), Weights.DotProduct(north), east * (Covariance * east), east * (Covariance * north), north * (Covariance * north));
    }

    /// <summary>Weights of the basis' own weights in the slope of the mean along a direction, years a kilometre.</summary>
    /// <param name="point">Where.</param>
    /// <param name="east">East part of the direction, whose length is 1.</param>
    /// <param name="north">North part.</param>
    public Vector<double> SlopeWeights(PlanePoint point, double east, double north) => east * Difference(point, 1, 0) + north * Difference(point, 0, 1);

    private Vector<double> Difference(PlanePoint point, double east, double north)
    {
        var (ahead, behind) = (new double[Basis.Count], new double[Basis.Count]);
        Basis.Fill(new(point.X + east, point.Y + north), ahead);
        Basis.Fill(new(point.X - east, point.Y - north), behind);
        var length = 2 * (Math.Abs(east) + Math.Abs(north));
        return Vector<double>.Build.Dense(ahead.Length, i => (ahead[i] - behind[i]) / length);
    }
}
