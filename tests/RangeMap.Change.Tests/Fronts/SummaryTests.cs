namespace RangeMap.Change.Tests;

public class SummaryTests
{
    [Fact]
    public void TheSummaryStatesSpeedIntervalSquaresAndYears()
    {
        var points = new SimulatedFront { SpeedKmPerYear = 8 }.FirstRecords(3).Select(p => p with { Time = p.Time + 1985 });
        var report = Spread.Measure(points, new() { Origin = SimulatedFront.Origin });
        Assert.Matches(@"^The front advances about [78]\.\d km a year \(95 % interval [78]\.\d to 8\.\d; \d+ squares, 198\d-2024\)\.", report.Summary);
    }

    [Fact]
    public void LateFindsBehindTheFrontAreSaid()
    {
        var report = Spread.Measure(new SimulatedFront { Scheme = DetectionScheme.Thin, SpeedKmPerYear = 10 }.FirstRecords(4), new() { Origin = SimulatedFront.Origin, Quantile = 0.98 });
        var (front, average) = (report.By(SpreadMethods.FrontQuantile).KmPerYear!.Value, report.By(SpreadMethods.AllPoints).KmPerYear!.Value);
        Assert.Equal(front - average > 0.25 * front, report.Summary.Contains("much slower", StringComparison.Ordinal));
    }

    [Fact]
    public void AnOriginTakenFromDistantFirstSquaresIsDoubted()
    {
        var points = Enumerable.Range(0, 40).Select(i => new ArrivalPoint(i % 2 * 500 + i / 2 * 10, i * 5, 2000 + i / 4));
        var report = Spread.Measure(points);
        Assert.True(report.Origin!.Estimated);
        Assert.Equal(4, report.Origin.Squares);
        Assert.Contains("the origin is uncertain", report.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void TheOriginIsTheMeanOfTheEarliestSquares()
    {
        var report = Spread.Measure([new(5, 5, 2000), new(15, 5, 2001), new(25, 5, 2002), new(15, 45, 2002), new(95, 95, 2003)]);
        Assert.Equal((15, 15, 4), (report.Origin!.X, report.Origin.Y, report.Origin.Squares));
    }
}
