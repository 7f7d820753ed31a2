namespace RangeMap.Change.Tests.Effort;

public class EffortTableTests
{
    private static readonly int _day = new DateOnly(2004, 5, 1).DayNumber;

    // Square 0: four visits by two named recorders and one without a name; square 1: a find without a visit; square 2: nothing.
    private static readonly SurveyPeriod _period = new(
        "2000/2009", 2000, 2009,
        FoundTable.Of(3, 4, [(0, 0, 9), (0, 1, 2), (0, 2, 1), (1, 3, 1)]),
        VisitTable.Of(3, [(0, _day, 7, [0, 1]), (0, _day + 1, 7, [0]), (0, _day + 2, 8, [0, 1, 2]), (0, _day + 3, 0, [])]));

    private static readonly GroupSurvey _survey = new(Surveys.Board(3, 1), 4, [_period]);

    [Fact]
    public void ASquareHasItsVisitsRecordersListsAndTaxa()
    {
        var effort = EffortTable.Of(_survey, _period)[0];
        Assert.Equal((4, 2, 12L, 3), (effort.Visits, effort.Recorders, effort.Records, effort.Taxa));
        Assert.Equal(1.5, effort.MeanListLength, 12);
        Assert.Equal(1.5, effort.MedianListLength, 12);
        Assert.Equal(Richness.FromRecords([9, 2, 1]), effort.ByRecords);
        Assert.Equal(Richness.FromLists([3, 2, 1], 4), effort.ByLists);
    }

    [Fact]
    public void AFindWithoutAVisitIsSurveyedButNotWellAndAnEmptySquareIsNot()
    {
        var effort = EffortTable.Of(_survey, _period);
        Assert.True(effort[1].Surveyed);
        Assert.False(effort[1].WellSurveyed);
        Assert.Equal(0, effort[1].MedianListLength);
        Assert.False(effort[2].Surveyed);
    }

    [Fact]
    public void WellSurveyedNeedsVisitsAndCoverageOfTheirLists()
    {
        // Coverage of the lists is 1 - 1/6 * 3/(3 + 2) = 0.9.
        Assert.False(Well(new()));
        Assert.True(Well(new() { WellSurveyedVisits = 4 }));
        Assert.True(Well(new() { WellSurveyedVisits = 4, WellSurveyedCoverage = 0.89 }));
        Assert.False(Well(new() { WellSurveyedVisits = 4, WellSurveyedCoverage = 0.91 }));

        static bool Well(ChangeOptions options) => EffortTable.Of(_survey, _period, options)[0].WellSurveyed;
    }

    [Fact]
    public void APeriodIsSummedUpAndComparedWithAnother()
    {
        var summary = EffortSummary.Of(_period, EffortTable.Of(_survey, _period));
        Assert.Equal(new("2000/2009", 4, 2, 13, 2, 0, 1.5), summary);
        var twice = summary with { Visits = 8, Recorders = 3, MeanListLength = null };
        Assert.Equal(new(2, 1.5, 1, 1, null), EffortRatio.Of(summary, twice));
        Assert.Null(EffortRatio.Of(twice with { Visits = 0 }, summary).Visits);
    }

    [Fact]
    public void APeriodWithoutAnythingIsSummedUpToo()
    {
        var empty = new SurveyPeriod("1900/1909", 1900, 1909, FoundTable.Of(3, 4, []), VisitTable.Of(3, []));
        Assert.Equal(new("1900/1909", 0, 0, 0, 0, 0, null), EffortSummary.Of(empty, EffortTable.Of(_survey, empty)));
    }

    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(5, 1)]
    [InlineData(5, -0.1)]
    [InlineData(5, double.NaN)]
    public void AThresholdOutOfItsRangeIsRefused(int visits, double coverage) => Assert.Throws<ArgumentOutOfRangeException>(
        () => EffortTable.Of(_survey, _period, new() { WellSurveyedVisits = visits, WellSurveyedCoverage = coverage }));
}
