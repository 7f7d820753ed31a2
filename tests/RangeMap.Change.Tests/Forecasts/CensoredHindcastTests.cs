namespace RangeMap.Change.Tests.Forecasts;

/// <summary>
/// The front of sixteen squares of <see cref="Arrivals.CensoredLineTests"/>, as it was known at the end of 2012, and what its line said of the squares not yet reached by 2016.
/// All numbers computed with R 4.2.2, survival 3.5-3.
/// </summary>
public class CensoredHindcastTests
{
    private const int Cut = 2012;
    private const int Horizon = 2016;
    private const double Open = double.PositiveInfinity;

    private static readonly (double Km, CensoredYear Arrival)[] Whole =
    [
        (0, new(1999, 2001)), (8, new(2000, 2003)), (15, new(2004, 2005)), (20, new(2002, 2005)), (27, new(2004, 2008)), (33, new(2009, 2010)), (40, new(2007, 2009)), (46, new(2008, 2012)),
        (55, new(2012, 2013)), (61, new(2011, 2015)), (70, new(2016, 2017)), (78, new(2013, 2016)), (85, new(2018, Open)), (92, new(2017, 2019)), (100, new(2019, Open)), (110, new(2020, Open)),
    ];

    private static readonly (double Km, CensoredYear Arrival)[] Known = [.. Whole.Select(square => (square.Km, AtCut(square.Arrival)))];
    private static readonly CensoredLine Line = CensoredLine.Fit(Known).Line!;

    [Fact]
    public void TheLineOfWhatWasKnownIsThatOfAnotherProgram()
    {
        Assert.Equal(2000.1883, Line.Intercept, 1e-4);
        Assert.Equal(0.233852, Line.Slope, 1e-6);
        Assert.Equal(0.920819, Line.Scale, 1e-6);
        Assert.Equal(4.27621, Line.Speed, 1e-5);
    }

    // 0.4 % was given to a square that was reached: a line without its own uncertainty is overconfident.
    [Fact]
    public void TheChancesOfSquaresNotYetReachedAreThoseOfAnotherProgram()
    {
        double[] expected = [0.99922, 0.95350, 0.27230, 0.00418, 0.00001];
        var chances = Chances().Select(square => square.Chance).ToArray();
        Assert.Equal(8, chances.Length);
        for (var i = 0; i < expected.Length; i++)
            Assert.Equal(expected[i], chances[i], 1e-5);
        Assert.All(chances[expected.Length..], chance => Assert.InRange(chance, 0, 1e-5));
    }

    [Fact]
    public void TheScoresOfThatForecastAreThoseOfAnotherProgram()
    {
        var chances = Chances().ToList();
        Assert.Equal([true, true, false, true, false, false, false, false], chances.Select(square => square.Happened));
        var scores = ForecastScores.Of(chances)!;
        Assert.Equal(0.133497, scores.Brier, 1e-6);
        Assert.Equal(0.933333, scores.Auc!.Value, 1e-6);
        var baseRate = ForecastScores.Of([.. chances.Select(square => (3 / 8.0, square.Happened))])!;
        Assert.Equal(0.234375, baseRate.Brier, 1e-9);
        Assert.Equal(1 - 0.133497 / 0.234375, scores.SkillAgainst(baseRate)!.Value, 1e-5);
    }

    /// <summary>P(reached by the horizon, given that it was not at the last visit).</summary>
    private static IEnumerable<(double Chance, bool Happened)> Chances() =>
        from pair in Known.Zip(Whole)
        where double.IsPositiveInfinity(pair.First.Arrival.By)
        let last = pair.First.Arrival.After
        select (Between(pair.First.Km, last, Horizon) / Between(pair.First.Km, last, Open), pair.Second.Arrival.By <= Horizon);

    private static double Between(double km, double after, double by)
    {
        var mean = Line.Intercept + Line.Slope * km;
        return ErrorCurve.Between(ArrivalErrors.Gaussian, (after - mean) / Line.Scale, (by - mean) / Line.Scale);
    }

    private static CensoredYear AtCut(CensoredYear arrival) => new(Math.Min(arrival.After, Cut), arrival.By > Cut ? Open : arrival.By);
}
