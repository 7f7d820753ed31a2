using System.Runtime.CompilerServices;

namespace RangeMap.Change;

/// <summary>
/// What the measures corrected for effort need before they give a number, and the constants of neighbourhood frequency scaling. Short of
/// a number here, an estimate is refused in words that name it.
/// </summary>
public sealed record TrendOptions
{
    /// <summary>Relative index: least number of taxa that pass <see cref="LeastSquaresBefore"/>; at least 5.</summary>
    public int LeastTaxaRelative { get; init; } = 20;

    /// <summary>Relative index: least number of squares of the earlier period, among those recorded in both; at least 1.</summary>
    public int LeastSquaresBefore { get; init; } = 5;

    /// <summary>Neighbourhood frequency: least number of taxa of the group; at least 10.</summary>
    public int LeastTaxaNeighbourhood { get; init; } = 50;

    /// <summary>Neighbourhood frequency: least number of squares with finds; at least 20.</summary>
    public int LeastSquaresNeighbourhood { get; init; } = 100;

    /// <summary>Neighbourhood frequency: number of nearest squares, the square itself among them; at least 10.</summary>
    public int NearestSquares { get; init; } = 200;

    /// <summary>Neighbourhood frequency: how many of the nearest, the most alike in taxa, make the neighbourhood; at least 5.</summary>
    public int AlikeSquares { get; init; } = 100;

    /// <summary>Neighbourhood frequency: the frequency-weighted mean frequency of a well-recorded neighbourhood, in (0, 1).</summary>
    public double StandardFrequency { get; init; } = 0.74;

    /// <summary>Neighbourhood frequency: taxa whose rank divided by the expected number of taxa lies below this are benchmarks; in (0, 1).</summary>
    public double BenchmarkRank { get; init; } = 0.27;

    /// <summary>Least number of squares in which the taxon was found, in each period where the method looks at periods; at least 2.</summary>
    public int LeastSquaresFound { get; init; } = 5;

    /// <summary>List length, reporting rate, occupancy: least number of squares visited in both periods; at least 2.</summary>
    public int LeastSquaresVisited { get; init; } = 20;

    /// <summary>List length and reporting rate: least number of visits with the taxon, both periods together; at least 2.</summary>
    public int LeastFinds { get; init; } = 10;

    /// <summary>
    /// List length: least number of other taxa on a list, at least 1. A list of one taxon is mostly a note of something seen in passing
    /// and says nothing on what else was about.
    /// </summary>
    public int LeastOthers { get; init; } = 2;

    /// <summary>Occupancy: least number of squares with two or more visits, in each period; at least 2.</summary>
    public int LeastSquaresRepeated { get; init; } = 20;

    /// <summary>Occupancy: least chance that the visits of a period find the taxon in a square where it is, mean of the squares; in (0, 1).</summary>
    public double LeastDetection { get; init; } = 0.2;

    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    internal void ThrowIfOutOfRange()
    {
        AtLeast(LeastTaxaRelative, 5);
        AtLeast(LeastSquaresBefore, 1);
        AtLeast(LeastTaxaNeighbourhood, 10);
        AtLeast(LeastSquaresNeighbourhood, 20);
        AtLeast(NearestSquares, 10);
        AtLeast(AlikeSquares, 5);
        Share(StandardFrequency);
        Share(BenchmarkRank);
        AtLeast(LeastSquaresFound, 2);
        AtLeast(LeastSquaresVisited, 2);
        AtLeast(LeastFinds, 2);
        AtLeast(LeastOthers, 1);
        AtLeast(LeastSquaresRepeated, 2);
        Share(LeastDetection);
    }

    private static void AtLeast(int value, int least, [CallerArgumentExpression(nameof(value))] string name = "") =>
        ArgumentOutOfRangeException.ThrowIfLessThan(value, least, name);

    private static void Share(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && value < 1))
            throw new ArgumentOutOfRangeException(name, value, "The value must lie between 0 and 1, both excluded.");
    }
}
