using MathNet.Numerics.LinearAlgebra;

namespace RangeMap.Change;

/// <summary>Draws of the arrival surface from its distribution, so that what is computed from it carries its uncertainty.</summary>
internal static class SurfaceDraws
{
    /// <summary>Mean arrival of each square under each draw, and the detection that goes with it.</summary>
    public static (double[] Means, DetectionCurve Detection)[] Of(ArrivalFit fit, IReadOnlyList<int> squares)
    {
        var rows = squares.Select(square =>
        {
            var row = new double[fit.Surface.Basis.Count];
            fit.Surface.Basis.Fill(new(fit.Sites[square].X, fit.Sites[square].Y), row);
            return row;
        }).ToArray();
        if (rows.Length == 0)
            return [.. Enumerable.Range(0, fit.Options.Draws).Select(_ => (Array.Empty<double>(), fit.Detection))];
        var design = Matrix<double>.Build.DenseOfRowArrays(rows);
        var factor = fit.SurfaceAtDetection.Covariance.Cholesky().Factor;
        return [.. Enumerable.Range(0, fit.Options.Draws).Select(draw =>
        {
            var chance = new Pcg(fit.Options.Seed, (ulong)draw);
            var normal = Vector<double>.Build.Dense(fit.Surface.Basis.Count);
            for (var j = 0; j < normal.Count; j++)
                normal[j] = chance.NextNormal();
            var weights = fit.Surface.Weights + factor * normal;
            if (fit.DetectionError is not { } error)
                return ((design * weights).ToArray(), fit.Detection);
            var (a, b) = error.Draw(ref chance);
            return ((design * (weights + a * error.WithA + b * error.WithB)).ToArray(), new DetectionCurve(fit.Detection.A + a, fit.Detection.B + b));
        })];
    }
}
