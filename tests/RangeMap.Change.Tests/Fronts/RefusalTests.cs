namespace RangeMap.Change.Tests;

/// <summary>Where the data cannot carry a speed there is a sentence, never a number and never NaN.</summary>
public class RefusalTests
{
    [Fact]
    public void FourSquaresAreNotEnough()
    {
        var report = Spread.Measure([new(0, 0, 2000), new(10, 0, 2001), new(20, 0, 2002), new(30, 0, 2003)]);
        Assert.Equal("not enough squares: 4 of at least 30", report.By(SpreadMethods.FrontQuantile).Refused);
        Assert.Equal("not enough squares: 4 of at least 10", report.By(SpreadMethods.AllPoints).Refused);
        Assert.Equal("No front speed: not enough squares: 4 of at least 30.", report.Summary);
        AssertAllRefused(report);
    }

    [Fact]
    public void OneSquareIsNotEnough() => AssertAllRefused(Spread.Measure([new(10, 10, 2000)]));

    [Fact]
    public void NoSquareIsNotEnough()
    {
        var report = Spread.Measure([]);
        Assert.Equal("not enough squares: there are none with a first record", report.By(SpreadMethods.FrontQuantile).Refused);
        AssertAllRefused(report);
        AssertAllRefused(Spread.MeasureDistances([]));
    }

    [Fact]
    public void AllInTheFirstYearIsNotEnough()
    {
        var report = Spread.Measure(Enumerable.Range(0, 100).Select(i => new ArrivalPoint(i * 10, i % 7 * 10, 2000)));
        Assert.Equal("not enough years with first records: 1 of at least 6", report.By(SpreadMethods.FrontQuantile).Refused);
        AssertAllRefused(report);
    }

    [Theory]
    [InlineData(double.NaN, 0, 2000)]
    [InlineData(0, double.PositiveInfinity, 2000)]
    [InlineData(0, 0, double.NaN)]
    public void ARowWithoutAUsableNumberIsNamed(double x, double y, double time)
    {
        var report = Spread.Measure([new(0, 0, 2000), new(x, y, time)]);
        Assert.Equal("1 of 2 rows hold a place, distance or time that is not a usable number", report.By(SpreadMethods.AllPoints).Refused);
        AssertAllRefused(report);
    }

    [Fact]
    public void ANegativeDistanceIsNamed() =>
        AssertAllRefused(Spread.MeasureDistances([new(-1, 2000), new(5, 2001)]));

    [Fact]
    public void EveryLateYearHeldByOneSquareStillGivesNumbersOrASentence()
    {
        // 60 squares in one year and one in each of six more: resamples differ wildly, some hold one year only.
        var points = Enumerable.Range(0, 60).Select(i => new ArrivalPoint(i % 8 * 10, i / 8 * 10, 2000))
            .Concat(Enumerable.Range(1, 6).Select(i => new ArrivalPoint(300 + i, 300, 2000 + i)));
        foreach (var estimate in Spread.Measure(points).Estimators)
            AssertNumbersOrSentence(estimate);
    }

    [Fact]
    public void HugeNumbersGiveASentence()
    {
        var points = Enumerable.Range(0, 60).Select(i => new ArrivalPoint(i * 1e200, 0, 2000 + i % 10));
        foreach (var estimate in Spread.Measure(points).Estimators)
            AssertNumbersOrSentence(estimate);
    }

    [Fact]
    public void DistancesAloneHaveNoSectors()
    {
        var report = Spread.MeasureDistances(PublishedFronts.TwentyThree);
        Assert.Empty(report.Sectors);
        Assert.Equal("sectors need the place of each square; only distances were given", report.By(SpreadMethods.Sectors).Refused);
    }

    [Fact]
    public void AnOptionOutOfItsRangeIsNamed() =>
        Assert.Throws<ArgumentOutOfRangeException>("Quantile", () => Spread.Measure([], new() { Quantile = 1 }));

    private static void AssertAllRefused(SpreadReport report) => Assert.All(report.Estimators, e =>
    {
        Assert.NotNull(e.Refused);
        Assert.Null(e.KmPerYear);
        AssertNumbersOrSentence(e);
    });

    private static void AssertNumbersOrSentence(SpreadEstimate estimate)
    {
        var numbers = new[] { estimate.KmPerYear, estimate.Low, estimate.High };
        Assert.All(numbers, n => Assert.Equal(estimate.Refused is null, n is not null));
        Assert.All(numbers, n => Assert.True(n is null || double.IsFinite(n.Value)));
    }

    [Fact]
    public void ASpeciesThatWasWidespreadWhenRecordingBeganHasNoSpeed()
    {
        // Found over 200 km in the first two years, then ever farther as recorders fill the map.
        var points = Enumerable.Range(0, 200).Select(i => new ArrivalPoint(i % 20 * 10, i / 20 * 10 + i % 7 * 30, 1985 + i / 10));
        var report = Spread.Measure(points, new() { RecordedFrom = 1985 });
        Assert.All(report.Estimators, estimate => Assert.Contains("when recording began (1985)", estimate.Refused, StringComparison.Ordinal));
        Assert.Empty(report.Phases);
        Assert.Equal(200, report.Squares);
    }

    [Fact]
    public void ASpeciesThatArrivesAtOnePlaceInTheFirstYearKeepsItsSpeed()
    {
        var points = Enumerable.Range(0, 200).Select(i => new ArrivalPoint(i * 2, i % 5 * 10, 1985 + i / 8));
        Assert.NotNull(Spread.Measure(points, new() { RecordedFrom = 1985 }).By(SpreadMethods.FrontQuantile).KmPerYear);
    }
}
