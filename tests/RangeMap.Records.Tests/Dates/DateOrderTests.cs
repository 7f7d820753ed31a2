namespace RangeMap.Records.Tests;

public sealed class DateOrderTests
{
    private const string Header = "species,date,gridref\n";

    [Fact]
    public void AFileWhoseOrderCannotBeToldIsNotImportedAtAll()
    {
        var problem = Reading.ProblemOf($"{Header}Fictus ruber,1998-06-03,TQ38\nFictus ruber,3/6/1998,TQ38\n");

        Assert.Contains("3/6/1998", problem.What, StringComparison.Ordinal);
        Assert.Equal("line 3", problem.Where);
        Assert.Contains("--date-order", problem.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("25/12/2001", 6, 3)]
    [InlineData("12/25/2001", 3, 6)]
    public void OneRowAnywhereProvesTheOrderOfAll(string proof, int month, int day)
    {
        var filling = string.Concat(Enumerable.Repeat("Fictus ruber,1999,TQ38\n", 100_000));
        var reading = Reading.Of($"{Header}Fictus ruber,3/6/1998,TQ38\n{filling}Fictus ruber,{proof},TQ38\n");

        Assert.Equal(new DateOnly(1998, month, day), reading.Records[0].Dates.First);
        Assert.Equal(new DateOnly(2001, 12, 25), reading.Records[^1].Dates.First);
        Assert.Equal(100_002, reading.Records.Count);
    }

    [Fact]
    public void ProofsOfBothOrdersContradictEachOther()
    {
        var problem = Reading.ProblemOf($"{Header}Fictus ruber,25/12/2001,TQ38\nFictus ruber,12/25/2001,TQ38\n");

        Assert.Contains("contradict", problem.What, StringComparison.Ordinal);
        Assert.Equal("lines 2 and 3", problem.Where);
    }

    [Fact]
    public void NumericDatesBehindAWordCountForTheOrder()
    {
        Assert.Contains("3/6/1998", Reading.ProblemOf($"{Header}Fictus ruber,before 3/6/1998,TQ38\n").What, StringComparison.Ordinal);
        Assert.Equal(new DateOnly(1998, 6, 2), Reading.Of($"{Header}Fictus ruber,before 3/6/1998,TQ38\nFictus ruber,Thu 25/6/1998,TQ38\n").Records[0].Dates.Last);
    }

    [Fact]
    public void EqualNumbersNeedNoOrder() => Assert.Single(Reading.Of($"{Header}Fictus ruber,6/6/1998,TQ38\n").Records);

    [Fact]
    public void AStatedOrderNeedsNoProof()
    {
        var reading = Reading.Of($"{Header}Fictus ruber,3/6/1998,TQ38\n", Reading.Options with { DateOrder = DateOrder.MonthFirst });

        Assert.Equal(new DateOnly(1998, 3, 6), Assert.Single(reading.Records).Dates.First);
    }

    [Fact]
    public void AStreamThatCannotBeReadTwiceNeedsAStatedOrder()
    {
        using var stream = new GeneratedStream($"{Header}Fictus ruber,25/6/1998,TQ38\n", ' ', 0, "");

        Assert.Contains("twice", Reading.ProblemOf(stream).What, StringComparison.Ordinal);
    }

    [Fact]
    public void DatesInPartsAndInTwoColumnsAreRead()
    {
        Assert.Equal(DayRange.Month(1998, 6), Assert.Single(Reading.OfRow("species,gridref,year,month,day", "Fictus ruber,TQ38,1998,June,").Records).Dates);
        Assert.Equal(new(new(1998, 6, 3), new(1998, 7, 31)), Assert.Single(Reading.OfRow("species,gridref,start date,end date", "Fictus ruber,TQ38,1998-06-03,1998-07").Records).Dates);
        Assert.Contains("lies before the start", Assert.Single(Reading.OfRow("species,gridref,start date,end date", "Fictus ruber,TQ38,1998-06-03,1998-05").Refusals).Reason, StringComparison.Ordinal);
        Assert.Equal("day", Assert.Single(Reading.OfRow("species,gridref,year,month,day", "Fictus ruber,TQ38,1998,2,31").Refusals).Field);
    }

    [Fact]
    public void ADateAndItsPartsThatDisagreeAreInDoubt()
    {
        Assert.Equal(Doubts.None, Assert.Single(Reading.OfRow("species,gridref,date,year", "Fictus ruber,TQ38,1998-06-03,1998").Records).Doubts);
        var record = Assert.Single(Reading.OfRow("species,gridref,date,year", "Fictus ruber,TQ38,1998-06-03,1999").Records);
        Assert.Equal(Doubts.DatesDisagree, record.Doubts);
        Assert.Equal(1998, record.Dates.First.Year);
    }
}
