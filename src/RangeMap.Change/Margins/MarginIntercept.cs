namespace RangeMap.Change;

/// <summary>
/// The shift of a margin of a whole group once growth and shrinkage of ranges are allowed for: over taxa, shift = a + b log10(squares
/// after / squares before), and a is the shift of a taxon whose range kept its size (docs/methods/margins.md, eq. 9; Thomas and Lennon 1999).
/// </summary>
/// <param name="Taxa">Number of taxa.</param>
/// <param name="Km">a, km outwards.</param>
/// <param name="Error">Its standard error, km.</param>
/// <param name="Interval">Its 95 % interval, Student's t with two degrees of freedom less than taxa.</param>
/// <param name="Slope">b, km for a tenfold growth.</param>
public sealed record MarginIntercept(int Taxa, double Km, double Error, Interval Interval, double Slope)
{
    /// <summary>Taxa below which there is no regression.</summary>
    private const int LeastTaxa = 5;

    /// <summary>Fits the line.</summary>
    /// <param name="taxa">Squares before and after, both more than 0, and the shift in km; taxa that are not so are left out.</param>
    /// <returns>Null for fewer than five taxa, or where all grew by the same factor.</returns>
    public static MarginIntercept? Fit(IEnumerable<(int Before, int After, double ShiftKm)> taxa)
    {
        var sound = taxa.Where(taxon => taxon is { Before: > 0, After: > 0 } && double.IsFinite(taxon.ShiftKm)).ToArray();
        var growth = Array.ConvertAll(sound, taxon => Math.Log10((double)taxon.After / taxon.Before));
        if (sound.Length < LeastTaxa || growth.Max() - growth.Min() < 1e-9)
            return null;

        var line = LeastSquaresLine.Fit(growth, Array.ConvertAll(sound, taxon => taxon.ShiftKm));
        var mean = growth.Average();
        var squares = growth.Sum(g => (g - mean) * (g - mean));
        // SE(b)² is s² / S(g,g), and SE(a)² is s² (1/n + mean² / S(g,g)).
        var error = line.SlopeError * Math.Sqrt(squares / growth.Length + mean * mean);
        var half = MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, growth.Length - 2, 0.975) * error;
        return new(growth.Length, line.Intercept, error, new(line.Intercept - half, line.Intercept + half), line.Slope);
    }
}
