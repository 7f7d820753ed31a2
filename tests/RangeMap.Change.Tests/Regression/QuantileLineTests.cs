using CsCheck;
using RangeMap.Change.Tests.Trends;

namespace RangeMap.Change.Tests;

public class QuantileLineTests
{
    private static readonly Gen<double> Tau = Gen.Int[0, 5].Select(i => new[] { 0.05, 0.25, 0.5, 0.75, 0.9, 0.95 }[i]);

    // Whole years and whole distances: many points on one line, many equal optima.
    private static readonly Gen<(double T, double Y)[]> Gridded =
        Gen.Select(Gen.Int[2000, 2006], Gen.Int[0, 12], (t, y) => ((double)t, (double)y)).Array[3, 18];

    private static readonly Gen<(double T, double Y)[]> Scattered =
        Gen.Select(Gen.Int[2000, 2030], Gen.Int[0, 300_000], (t, metres) => ((double)t, metres / 1000.0)).Array[3, 30];

    [Fact]
    public void TheMinimumIsThatOfTheBestPairOnGriddedPoints() =>
        Gen.Select(Gridded, Tau).Where(c => Varies(c.Item1)).Sample(c => AgreesWithAllPairs(c.Item1, c.Item2), iter: 3000);

    [Fact]
    public void TheMinimumIsThatOfTheBestPairOnScatteredPoints() =>
        Gen.Select(Scattered, Tau).Where(c => Varies(c.Item1)).Sample(c => AgreesWithAllPairs(c.Item1, c.Item2), iter: 2000);

    [Fact]
    public void WithAWholeNumberBelowTheQuantileSeveralLinesFitEquallyWell()
    {
        // Two points in each of two years, median: any line between the points of each year is optimal.
        var line = QuantileLine.Fit([0, 0, 1, 1], [0, 2, 0, 2], 0.5);
        Assert.False(line.IsUnique);
        Assert.Equal(new Interval(-2, 2), line.Slopes);
        Assert.Equal(0, line.Slope, 1e-12);
        Assert.Equal(2, line.Objective, 1e-12);
    }

    [Fact]
    public void PointsOnALineGiveThatLine()
    {
        var t = Enumerable.Range(0, 500).Select(i => (double)(i % 40)).ToArray();
        var line = QuantileLine.Fit(t, [.. t.Select(x => 3 + 7 * x)], 0.95);
        Assert.Equal(7, line.Slope, 1e-12);
        Assert.Equal(3, line.Intercept, 1e-9);
        Assert.True(line.IsUnique);
    }

    [Fact]
    public void OneYearIsNoLine() =>
        Assert.Throws<ArgumentException>(() => QuantileLine.Fit([2000, 2000, 2000], [1, 2, 3], 0.95));

    // Reference/quantiles.R draws the points and fits them with rq of the package quantreg 5.94, R 4.2.2.
    [Fact]
    public void RandomPointsHaveTheLinesOfAnotherProgram()
    {
        var points = ReferenceTables.Numbers("quantile-points.csv").ToLookup(row => row[0]);
        var lines = ReferenceTables.Numbers("quantile-lines.csv").ToList();
        Assert.Equal(40, lines.Count);
        foreach (var expected in lines)
        {
            var set = points[expected[0]].ToList();
            var line = QuantileLine.Fit([.. set.Select(row => row[1])], [.. set.Select(row => row[2])], expected[1]);
            Assert.True(line.IsUnique);
            Assert.Equal(expected[2], line.Intercept, 1e-6);
            Assert.Equal(expected[3], line.Slope, 1e-9);
            Assert.Equal(1, line.Objective / expected[4], 1e-8);
        }
    }

    private static bool Varies((double T, double Y)[] points) => points.Any(p => p.T != points[0].T);

    private static void AgreesWithAllPairs((double T, double Y)[] points, double tau)
    {
        var line = QuantileLine.Fit([.. points.Select(p => p.T)], [.. points.Select(p => p.Y)], tau);
        var (objective, least, greatest) = BestPair(points, tau);
        Assert.Equal(objective, line.Objective, 1e-8 * (1 + objective));
        Assert.Equal(objective, Objective(points, tau, line.Intercept, line.Slope), 1e-8 * (1 + objective));
        Assert.Equal(least, line.Slopes.Low, 1e-8);
        Assert.Equal(greatest, line.Slopes.High, 1e-8);
    }

    // Some optimal line passes through two points, so the best of all pairs is the truth, however slow.
    private static (double Objective, double Least, double Greatest) BestPair((double T, double Y)[] points, double tau)
    {
        var pairs = (from p in points
                     from q in points
                     where p.T < q.T
                     let slope = (q.Y - p.Y) / (q.T - p.T)
                     select (Slope: slope, Objective: Objective(points, tau, p.Y - slope * p.T, slope))).ToList();
        var best = pairs.Min(p => p.Objective);
        var optimal = pairs.Where(p => p.Objective <= best + 1e-9 * (1 + best)).Select(p => p.Slope).ToList();
        return (best, optimal.Min(), optimal.Max());
    }

    private static double Objective((double T, double Y)[] points, double tau, double intercept, double slope) =>
        points.Sum(p => p.Y - intercept - slope * p.T is var r && r >= 0 ? tau * r : (tau - 1) * r);
}
