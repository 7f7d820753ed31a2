using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>An estimate with its standard error, judged by Student's t.</summary>
/// <param name="Interval">Estimate -/+ the 0.975 quantile times the error.</param>
/// <param name="P">Two-sided p-value of 0.</param>
internal readonly record struct Wald(Interval Interval, double P)
{
    /// <param name="value">The estimate.</param>
    /// <param name="error">Its standard error, above 0.</param>
    /// <param name="freedom">Degrees of freedom, at least 1.</param>
    internal static Wald Of(double value, double error, double freedom)
    {
        var half = StudentT.InvCDF(0, 1, freedom, 0.975) * error;
        return new(new(value - half, value + half), 2 * StudentT.CDF(0, 1, freedom, -Math.Abs(value) / error));
    }
}
