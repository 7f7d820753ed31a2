namespace RangeMap.Change.Tests;

/// <summary>Where the map lies and how time is counted cannot change a speed.</summary>
public class InvarianceTests
{
    private static readonly IReadOnlyList<ArrivalPoint> Points = new SimulatedFront { Scheme = DetectionScheme.Rising }.FirstRecords(11);
    private static readonly SpreadReport Plain = Measure(Points);
    private static readonly IReadOnlyList<SquareVisit> Visits = new SimulatedFront { Scheme = DetectionScheme.Rising }.Visits(11);
    private static readonly SpreadReport Visited = Measure(Visits);
    private static readonly string[] ByVisits = [SpreadMethods.IntervalCensored, SpreadMethods.GammaMargin];

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
            // Of equally good lines of a resample rounding picks one: the interval follows to five figures.
            AssertNear(estimate.Low / 12, months.By(estimate.Method).Low, 1e-5);
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

    [Theory]
    [InlineData("shift")]
    [InlineData("turn")]
    [InlineData("mirror")]
    [InlineData("years")]
    [InlineData("rows")]
    public void WithVisitsTooThePlaceOfTheMapChangesNothing(string change)
    {
        Func<SquareVisit, SquareVisit> moved = change switch
        {
            "shift" => v => v with { X = v.X + 250, Y = v.Y - 730 },
            "turn" => v => v with { X = v.Y, Y = -v.X },
            "mirror" => v => v with { X = -v.X },
            "years" => v => v with { Time = v.Time + 1985 },
            _ => v => v,
        };
        var visits = Visits.Select(moved).ToList();
        if (change == "rows")
            visits.Reverse();
        foreach (var method in ByVisits)
        {
            var (expected, actual) = (Visited.By(method), Measure(visits).By(method));
            Assert.Equal(expected.N, actual.N);
            AssertNear(expected.KmPerYear, actual.KmPerYear);
            // Mirrored wedges begin at the other end.
            AssertNear(expected.Low, actual.Low, change == "mirror" ? 0.1 : 1e-6);
        }
    }

    [Fact]
    public void WithVisitsTooCountingInMonthsDividesTheSpeedByTwelve()
    {
        var months = Measure(Visits.Select(v => v with { Time = v.Time * 12 }).ToList());
        foreach (var method in ByVisits)
        {
            AssertNear(Visited.By(method).KmPerYear / 12, months.By(method).KmPerYear);
            AssertNear(Visited.By(method).High / 12, months.By(method).High);
        }
    }

    private static SpreadReport Measure(IReadOnlyList<SquareVisit> visits) => Spread.Measure(VisitedFrontTests.Firsts(visits), null, visits);

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

    private static void AssertNear(double? expected, double? actual, double tolerance = 1e-6)
    {
        Assert.Equal(expected is null, actual is null);
        if (expected is not null)
            Assert.Equal(expected.Value, actual!.Value, tolerance);
    }
}
