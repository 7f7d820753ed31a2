namespace RangeMap.Change;

/// <summary>
/// Shift of margins across many taxa, freed from that part which follows from growing or shrinking: the regression of shift on the change in number of
/// squares, read where the number stays the same (docs/methods/margins.md, eq. 9). Thomas and Lennon 1999, Nature 399:213. Sensitive to changed
/// effort: Kujala et al. 2013, Global Change Biology 19:420-430.
/// </summary>
public static class MarginIntercept
{
    /// <summary>The shift at unchanged size with its standard error, km; null for fewer than three taxa, or when all changed alike.</summary>
    /// <param name="taxa">Squares before and after, each at least 1, and the shift in km.</param>
    public static (double Km, double Error)? Of(IReadOnlyCollection<(int Before, int After, double ShiftKm)> taxa)
    {
        var growth = taxa.Select(t => Math.Log10((double)t.After / t.Before)).ToArray();
        if (growth.Length < 3 || growth.Distinct().Count() < 2)
            return null;
        var line = LeastSquaresLine.Fit(growth, [.. taxa.Select(t => t.ShiftKm)]);
        var (n, mean) = (growth.Length, growth.Average());
        var spread = growth.Sum(g => (g - mean) * (g - mean));
        return (line.Intercept, Math.Sqrt(line.ResidualSquares / (n - 2) * (1.0 / n + mean * mean / spread)));
    }
}
