namespace RangeMap.Change.Tests;

/// <summary>The estimators that read visits which found nothing.</summary>
public class VisitedFrontTests
{
    private static readonly SpreadOptions FromCorner = new() { Origin = SimulatedFront.Origin, OpenAngle = Math.PI / 2 };

    [Fact]
    public void WithAllVisitsKnownTheSpeedByIntervalsIsTheTrueOne()
    {
        var estimate = Measure(new SimulatedFront().Visits(4)).By(SpreadMethods.IntervalCensored);
        Assert.Equal(5, estimate.KmPerYear!.Value, 0.15);
        Assert.InRange(5, estimate.Low!.Value, estimate.High!.Value);
        // All squares that were visited, those never reached too.
        Assert.True(estimate.N > 500);
    }

    [Fact]
    public void TheGammaMarginOfAFilledRangeIsHighByAboutASixth()
    {
        var estimate = Measure(new SimulatedFront().Visits(4)).By(SpreadMethods.GammaMargin);
        Assert.Equal(5 * 7 / 6.0, estimate.KmPerYear!.Value, 0.4);
    }

    [Fact]
    public void WithoutVisitsBothSayWhy()
    {
        var report = Spread.Measure(new SimulatedFront().FirstRecords(4), FromCorner);
        Assert.Equal("needs the visits that found nothing; only first records were given", report.By(SpreadMethods.IntervalCensored).Refused);
        Assert.Equal("needs the visits that found nothing; only first records were given", report.By(SpreadMethods.GammaMargin).Refused);
        Assert.DoesNotContain(report.Estimators, estimate => estimate.Method == SpreadMethods.ArrivalModel);
    }

    [Fact]
    public void FindsAloneAreNotEnough()
    {
        var visits = new SimulatedFront().Visits(4).Where(visit => visit.Found).ToList();
        Assert.Equal("not enough squares visited both before the species was there and after: 0 of at least 10", Measure(visits).By(SpreadMethods.IntervalCensored).Refused);
    }

    [Fact]
    public void AFirstRecordWithoutAVisitCountsAsAFind()
    {
        var records = FirstRecords.FromPoints([new(5, 5, 2003), new(25, 5, 2001)], FromCorner);
        var squares = VisitedSquares.Of(records, [new(5, 5, 2000, false), new(5, 5, 2006, true), new(45, 5, 2008, false)]);
        Assert.Equal([new(2000, 2003), new(double.NegativeInfinity, 2001), new(2008, double.PositiveInfinity)], squares.Select(square => square.Arrival));
    }

    [Fact]
    public void WhereTheFarSquaresWereFoundLongAfterTheirArrivalTheSummarySaysSo()
    {
        // A front of 10 km a year in five directions; each square was visited in vain until the year before, those far out for ever longer after the arrival.
        var visits = Enumerable.Range(0, 200).SelectMany(i =>
        {
            double distance = 5 * (i / 5 + 1), direction = i % 5 / 3.0, found = 2000 + distance / 10 - i % 3;
            var (x, y) = (distance * Math.Cos(direction), distance * Math.Sin(direction));
            return new[] { new SquareVisit(x, y, Math.Floor(found - distance / 20) - 1, false), new SquareVisit(x, y, Math.Floor(found), true) };
        }).ToList();
        var report = Measure(visits);
        Assert.True(report.By(SpreadMethods.IntervalCensored).KmPerYear > 1.25 * report.By(SpreadMethods.FrontQuantile).KmPerYear);
        Assert.Contains("Dated by the visits that found nothing before, arrivals give a faster spread", report.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void AModelThatCouldNotBeFittedIsListedWithItsReason()
    {
        var visits = new SimulatedFront().Visits(4);
        var report = Spread.Measure(Firsts(visits), FromCorner, visits, new(null, "There are hardly any visits without the species."));
        Assert.Equal("There are hardly any visits without the species.", report.By(SpreadMethods.ArrivalModel).Refused);
    }

    internal static IReadOnlyList<ArrivalPoint> Firsts(IEnumerable<SquareVisit> visits) =>
        [.. CensoredYears.Of(visits).Where(square => double.IsFinite(square.Arrival.By)).Select(square => new ArrivalPoint(square.X, square.Y, square.Arrival.By))];

    private static SpreadReport Measure(IReadOnlyList<SquareVisit> visits) => Spread.Measure(Firsts(visits), FromCorner, visits);
}
