namespace RangeMap.Change.Tests;

public class RetreatTests
{
    [Fact]
    public void AFrontThatDrawsBackIsSeenByVisitsThatFindNothingAnyMore()
    {
        // Twenty years outwards at 5 km a year, then back at the same speed.
        var report = Measure(year => year <= 20 ? 5 * year : 100 - 5 * (year - 20));
        Assert.Equal([FrontMovement.Advances, FrontMovement.DrawsBack], report.Phases.Select(phase => phase.Movement));
        Assert.InRange(report.Phases[1].KmPerYear, -5.5, -4.5);
        Assert.StartsWith("The spread turned into a retreat about 20", report.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void AFrontThatHoldsItsGroundStandsStill()
    {
        var report = Measure(year => Math.Min(100, 5 * year));
        Assert.Equal([FrontMovement.Advances, FrontMovement.StandsStill], report.Phases.Select(phase => phase.Movement));
        Assert.StartsWith("The spread came to a stand about 20", report.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void OuterSquaresSearchedInVainOnlyFiveTimesCountAsHeld()
    {
        var records = FirstRecords.FromPoints([new(5, 5, 2001), new(25, 5, 2003)], new() { Origin = new(5, 5) });
        SquareVisit[] finds = [new(5, 5, 2001, true), new(5, 5, 2012, true), new(25, 5, 2003, true)];
        var misses = Enumerable.Range(2004, 6).Select(year => new SquareVisit(25, 5, year, false)).ToArray();
        double[] Boundary(int searches) => HeldBoundary.ByTime(records, VisitedSquares.Of(records, [.. finds, .. misses.Take(searches)]), [2001, 2003, 2004]).Farthest;
        Assert.Equal([0, 20, 20], Boundary(5));
        Assert.Equal([0, 20, 0], Boundary(6));
    }

    private static SpreadReport Measure(Func<int, double> frontAt)
    {
        var visits = new List<SquareVisit>();
        for (var square = 0; square < 225; square++)
        {
            double x = square % 15 * 10 + 5, y = square / 15 * 10 + 5;
            for (var year = 0; year < 40; year++)
                visits.Add(new(x, y, 2000 + year, Math.Sqrt(x * x + y * y) <= frontAt(year)));
        }

        return Spread.Measure(VisitedFrontTests.Firsts(visits), new() { Origin = SimulatedFront.Origin, RecordedUntil = 2039 }, visits);
    }
}
