using System.Globalization;

namespace RangeMap.Change.Tests.Arrivals;

public class CensoredLineTests
{
    private const double Open = double.PositiveInfinity;
    private static readonly double[] Distances = [0, 8, 15, 20, 27, 33, 40, 46, 55, 61, 70, 78, 85, 92, 100, 110];
    private static readonly double[] After = [1999, 2000, 2004, 2002, 2004, 2009, 2007, 2008, 2012, 2011, 2016, 2013, 2018, 2017, 2019, 2020];
    private static readonly double[] By = [2001, 2003, 2005, 2005, 2008, 2010, 2009, 2012, 2013, 2015, 2017, 2016, Open, 2019, Open, Open];
    private static readonly (double, CensoredYear)[] Front = [.. Distances.Select((d, i) => (d, new CensoredYear(After[i], By[i])))];

    // Computed with R 4.2.2, survival 3.5-3.
    [Fact]
    public void AFrontOfSixteenSquaresHasItsGaussianLine()
    {
        var line = CensoredLine.Fit(Front).Line!;
        Assert.Equal(2000.765371, line.Intercept, 1e-5);
        Assert.Equal(0.204003, line.Slope, 1e-6);
        Assert.Equal(0.011868, line.SlopeError, 1e-6);
        Assert.Equal(1.085089, line.Scale, 1e-5);
        Assert.Equal(-12.535882, line.LogLikelihood, 1e-6);
        Assert.Equal(4.901896, line.Speed, 1e-5);
        Assert.Equal(0.285183, line.SpeedError, 1e-5);
        var interval = line.SpeedInterval(0.95)!.Value;
        Assert.Equal(4.400160, interval.Low, 1e-5);
        Assert.Equal(5.532783, interval.High, 1e-5);
    }

    // Computed with R 4.2.2, survival 3.5-3.
    [Fact]
    public void AFrontOfSixteenSquaresHasItsLogisticLine()
    {
        var line = CensoredLine.Fit(Front, ArrivalErrors.Logistic).Line!;
        Assert.Equal(2000.750835, line.Intercept, 1e-5);
        Assert.Equal(0.204240, line.Slope, 1e-6);
        Assert.Equal(0.629300, line.Scale, 1e-5);
        Assert.Equal(-12.899996, line.LogLikelihood, 1e-6);
        Assert.Equal(4.896191, line.Speed, 2e-5);
    }

    // Computed with R 4.2.2.
    [Fact]
    public void TheLikelihoodOfAnyLineCanBeAsked() =>
        Assert.Equal(-15.556764, CensoredLine.LogLikelihoodOf(Front, 2000, 0.2, 1.5), 1e-6);

    // Reference/arrivals.R draws the intervals and fits them with survreg of the package survival 3.5-3, R 4.2.2.
    [Fact]
    public void RandomFrontsAgreeWithAnotherProgram()
    {
        var squares = Rows("arrivals.csv").GroupBy(row => row[0]).ToDictionary(set => set.Key, set => set.Select(row => (Number(row[1]), new CensoredYear(row[2].Length == 0 ? -Open : Number(row[2]), row[3].Length == 0 ? Open : Number(row[3])))).ToArray());
        var answers = Rows("arrivals-survreg.csv").ToList();
        Assert.Equal(12, answers.Count);
        foreach (var answer in answers)
        {
            var line = CensoredLine.Fit(squares[answer[0]], Enum.Parse<ArrivalErrors>(answer[1], ignoreCase: true)).Line!;
            Assert.Equal(Number(answer[2]), line.Intercept, 1e-3);
            Assert.Equal(1, line.Slope / Number(answer[3]), 1e-5);
            Assert.Equal(1, line.SlopeError / Number(answer[4]), 1e-4);
            Assert.Equal(1, line.Scale / Number(answer[5]), 1e-5);
            Assert.Equal(Number(answer[6]), line.LogLikelihood, 1e-5);
        }
    }

    [Fact]
    public void IntervalsThatOneLineMeetsAreRefused()
    {
        var answer = CensoredLine.Fit([.. Enumerable.Range(0, 20).Select(i => (10.0 * i, new CensoredYear(2000 + 2 * i - 1.5, 2000 + 2 * i + 1 + i % 3)))]);
        Assert.Null(answer.Line);
        Assert.StartsWith("a straight line passes through the interval of every square", answer.Refused, StringComparison.Ordinal);
    }

    [Fact]
    public void OneSquareOffTheLineIsEnoughForAFit()
    {
        var squares = Enumerable.Range(0, 20).Select(i => (10.0 * i, new CensoredYear(2000 + 2 * i - 1.5, 2000 + 2 * i + 1 + i % 3))).ToArray();
        squares[7] = (70, new(2018, 2020));
        squares[12] = (120, new(2018, 2020));
        Assert.Equal(5, CensoredLine.Fit(squares).Line!.Speed, 0.5);
    }

    [Fact]
    public void ASpeciesThatNoVisitEverMissedIsRefused() =>
        Assert.StartsWith("too few squares tell", CensoredLine.Fit([.. Distances.Select(d => (d, new CensoredYear(-Open, 2000 + d)))]).Refused, StringComparison.Ordinal);

    [Fact]
    public void AnIntervalThatSaysNothingIsRefused() =>
        Assert.Equal(ArrivalWords.Unsound, CensoredLine.Fit([(1, new(-Open, Open))]).Refused);

    [Fact]
    public void ALevelLineHasNoSpeed()
    {
        var line = CensoredLine.Fit([.. Enumerable.Range(0, 60).Select(i => (10.0 * (i % 12), new CensoredYear(2000 + i * 7 % 11, 2002 + i * 7 % 11)))]).Line!;
        Assert.Null(line.SpeedInterval(0.95));
    }

    [Fact]
    public void AMirroredFrontRunsBackwardsAtTheSameSpeed()
    {
        var back = CensoredLine.Fit([.. Front.Select(s => (200 - s.Item1, s.Item2))]).Line!;
        Assert.Equal(-4.901896, back.Speed, 1e-5);
        Assert.Equal(-4.400160, back.SpeedInterval(0.95)!.Value.High, 1e-5);
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    private static List<string[]> Rows(string table)
    {
        using var stream = typeof(CensoredLineTests).Assembly.GetManifestResourceStream(table) ?? throw new FileNotFoundException(table);
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.TrimEnd('\r').Split(','))];
    }
}
