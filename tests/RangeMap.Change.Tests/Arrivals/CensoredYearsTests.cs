namespace RangeMap.Change.Tests.Arrivals;

public class CensoredYearsTests
{
    [Fact]
    public void TheArrivalLiesAfterTheLastMissBeforeTheFirstFind() =>
        Assert.Equal(new(2003, 2006), CensoredYears.OfSquare([(2001, false), (2003, false), (2006, true), (2008, true), (2007, false)]));

    [Fact]
    public void ASpeciesNeverFoundMayArriveAnyTimeAfterTheLastVisit() =>
        Assert.Equal(new(2009, double.PositiveInfinity), CensoredYears.OfSquare([(2009, false), (2002, false)]));

    [Fact]
    public void ASpeciesFoundOnTheFirstVisitMayHaveArrivedAnyTimeBefore() =>
        Assert.Equal(new(double.NegativeInfinity, 2004), CensoredYears.OfSquare([(2004, true), (2005, false)]));

    [Fact]
    public void AMissInTheYearOfTheFirstFindSaysNothing() =>
        Assert.Equal(new(2001, 2004), CensoredYears.OfSquare([(2001, false), (2004, false), (2004, true)]));

    [Fact]
    public void EachSquareHasItsOwnInterval()
    {
        var squares = CensoredYears.Of([new(5, 5, 2001, false), new(15, 5, 2002, false), new(5, 5, 2003, true)]);
        Assert.Equal([new(5, 5, new(2001, 2003)), new(15, 5, new(2002, double.PositiveInfinity))], squares);
    }

    [Fact]
    public void ASquareWithoutVisitsHasNoInterval() => Assert.Throws<ArgumentException>(() => CensoredYears.OfSquare([]));
}
