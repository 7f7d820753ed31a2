namespace RangeMap.Change.Tests;

/// <summary>Where the map lies and how time is counted cannot change a speed.</summary>
public class InvarianceTests
{
    private static readonly IReadOnlyList<ArrivalPoint> Points = new SimulatedFront { Scheme = DetectionScheme.Rising }.FirstRecords(11);
    private static readonly SpreadReport Plain = Measure(Points);

    [Fact]
    public void ShiftingTheMapChangesNothing() =>
        AssertSame(Plain, Measure(Points.Select(p => p with { X = p.X + 250, Y = p.Y - 730 })));

    [Fact]
    public void TurningTheMapByASectorTurnsTheSectorsAndChangesNothingElse()
    {
        var turned = Measure(Points.Select(p => p with { X = p.Y, Y = -p.X }));
        AssertSame(Plain, turned);
        for (var i = 0; i < 8; i++)
            AssertNear(Plain.Sectors[i].KmPerYear, turned.Sectors[(i + 2) % 8].KmPerYear);
    }

    [Fact]
    public void MirroringTheMapChangesNoSpeed()
    {
        var mirrored = Measure(Points.Select(p => p with { X = -p.X }));
        foreach (var estimate in Plain.Estimators)
            AssertNear(estimate.KmPerYear, mirrored.By(estimate.Method).KmPerYear);
    }

    [Fact]
    public void ShiftingTheYearsChangesNothing() =>
        AssertSame(Plain, Measure(Points.Select(p => p with { Time = p.Time + 1985 })));

    [Fact]
    public void CountingInMonthsDividesTheSpeedByTwelve()
    {
        var months = Measure(Points.Select(p => p with { Time = p.Time * 12 }), "month");
        foreach (var estimate in Plain.Estimators)
        {
            AssertNear(estimate.KmPerYear / 12, months.By(estimate.Method).KmPerYear);
            AssertNear(estimate.Low / 12, months.By(estimate.Method).Low);
        }

        Assert.Contains("km a month", months.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void TheOrderOfTheRowsChangesNothing() => AssertSame(Plain, Measure(Points.Reverse()));

    [Fact]
    public void ASquareGivenTwiceCountsOnceAtItsEarliestYear() =>
        AssertSame(Plain, Measure(Points.Concat(Points.Take(50).Select(p => p with { Time = p.Time + 4 }))));

    [Fact]
    public void AnotherSeedMovesTheIntervalALittleAndTheSpeedNotAtAll()
    {
        var front = Plain.By(SpreadMethods.FrontQuantile);
        var other = Spread.Measure(Points, new() { Seed = 2 }).By(SpreadMethods.FrontQuantile);
        Assert.Equal(front.KmPerYear, other.KmPerYear);
        Assert.NotEqual(front.Low, other.Low);
        Assert.InRange((other.High - other.Low)!.Value / (front.High - front.Low)!.Value, 0.8, 1.25);
    }

    private static SpreadReport Measure(IEnumerable<ArrivalPoint> points, string unit = "year") =>
        Spread.Measure(points, new() { TimeUnit = unit });

    private static void AssertSame(SpreadReport expected, SpreadReport actual)
    {
        foreach (var estimate in expected.Estimators)
        {
            var other = actual.By(estimate.Method);
            Assert.Equal((estimate.N, estimate.Refused), (other.N, other.Refused));
            AssertNear(estimate.KmPerYear, other.KmPerYear);
            AssertNear(estimate.Low, other.Low);
            AssertNear(estimate.High, other.High);
        }
    }

    private static void AssertNear(double? expected, double? actual)
    {
        Assert.Equal(expected is null, actual is null);
        if (expected is not null)
            Assert.Equal(expected.Value, actual!.Value, 1e-6);
    }
}
