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
        // Five squares a year on a front of 10 km a year, in five directions, and five near the origin found late.
        var front = Enumerable.Range(0, 100).Select(i => At(10 * (i / 5 + 1), i % 5, 2001 + i / 5));
        var late = Enumerable.Range(0, 100).Select(i => At(5 + i / 5 * 0.5, i % 5 + 0.5, 2001 + i / 5));
        var report = Spread.Measure(front.Concat(late), new() { Origin = new(0, 0) });
        Assert.Equal(10, report.By(SpreadMethods.FrontQuantile).KmPerYear!.Value, 0.5);
        Assert.True(report.By(SpreadMethods.AllPoints).KmPerYear < 7);
        Assert.Contains("The average of all first records is much slower", report.Summary, StringComparison.Ordinal);
        Assert.Contains("found long after", report.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void ASpreadTowardsTheOriginIsNoAdvance()
    {
        var points = Enumerable.Range(0, 100).Select(i => new ArrivalPoint(300 - i / 5 * 10 + i % 5, i % 7, 2000 + i / 5));
        var report = Spread.Measure(points, new() { Origin = new(0, 0) });
        Assert.True(report.By(SpreadMethods.FrontQuantile).High < 0);
        Assert.StartsWith("Later first records lie closer to the origin", report.Summary, StringComparison.Ordinal);
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

    private static ArrivalPoint At(double distance, double direction, double year) =>
        new(distance * Math.Cos(direction / 3), distance * Math.Sin(direction / 3), year);
}
