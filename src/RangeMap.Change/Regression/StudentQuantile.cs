using System.Collections.Concurrent;
using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>The 97.5 % quantile of Student's t, remembered, for it is asked for every taxon.</summary>
internal static class StudentQuantile
{
    private static readonly ConcurrentDictionary<int, double> Known = new();

    /// <summary>For a two-sided 95 % interval.</summary>
    /// <param name="freedom">Degrees of freedom, at least 1.</param>
    public static double Of(int freedom) => Known.GetOrAdd(freedom, static freedom => StudentT.InvCDF(0, 1, freedom, 0.975));
}
