namespace RangeMap.Records.Tests;

public sealed class SeasonCheckTests
{
    private const Doubts OfSeason = Doubts.OutOfSeason | Doubts.StageAgainstDate;

    [Theory]
    [InlineData("worker", "2010-06-03", Doubts.None)]
    [InlineData("worker", "2010-01-20", Doubts.OutOfSeason)]
    [InlineData("worker", "2010-03-10", Doubts.OutOfSeason | Doubts.StageAgainstDate)]
    [InlineData("queen", "2010-03-10", Doubts.None)]
    [InlineData("male", "2010-05-10", Doubts.OutOfSeason | Doubts.StageAgainstDate)]
    [InlineData(null, "2010-03-10", Doubts.None)]
    [InlineData(null, "2010-01-20", Doubts.OutOfSeason)]
    [InlineData("larva", "2010-01-20", Doubts.None)]
    [InlineData("worker", "2010-01-01/2010-12-31", Doubts.None)]
    [InlineData("worker", "2010-01-01/2010-02-28", Doubts.OutOfSeason)]
    [InlineData("worker", "2010-04-18/2010-04-25", Doubts.None)]
    public void ADateIsComparedWithTheWeeksOfItsStage(string? stage, string day, Doubts found) =>
        Assert.Equal(found, Checking.Find(Checking.Record("C", stage, day: day)) & OfSeason);

    [Fact]
    public void TheWordsTellTheWeeksAndWhatIsAboutInstead()
    {
        var record = Checking.Record("C", "worker", day: "2010-03-10");

        Assert.Equal("The record is dated 10 Mar 2010, week 10 of the year. The list has Species C about: workers in weeks 16-44.", Checking.Words(record, Doubts.OutOfSeason));
        Assert.Equal("Workers are not about in that week, and queens are.", Checking.Words(record, Doubts.StageAgainstDate));
    }

    [Fact]
    public void WeeksOfGraceAreGiven()
    {
        var context = Checking.Context with { Limits = new() { SeasonMarginWeeks = 2 } };

        Assert.Equal(Doubts.None, Checking.Find(Checking.Record("C", "worker", day: "2010-04-07"), context) & OfSeason);
        Assert.Equal(OfSeason, Checking.Find(Checking.Record("C", "worker", day: "2010-03-31"), context) & OfSeason);
    }

    [Theory]
    [InlineData("2000-12-31", true)]
    [InlineData("2001-01-02", false)]
    [InlineData("2000-06-01/2001-06-01", false)]
    public void ARecordBeforeTheFirstYearIsInDoubt(string day, bool found) =>
        Assert.Equal(found, (Checking.Find(Checking.Record("E", day: day)) & Doubts.BeforeFirstYear) != 0);

    [Theory]
    [InlineData("2010-01-01", true)]
    [InlineData("1899-12-30", true)]
    [InlineData("2010-01-02", false)]
    [InlineData("2010-01-01/2010-12-31", false)]
    public void ADayThatProgramsFillInIsInDoubt(string day, bool found) =>
        Assert.Equal(found, (Checking.Find(Checking.Record("AB", day: day)) & Doubts.DateDefault) != 0);
}
