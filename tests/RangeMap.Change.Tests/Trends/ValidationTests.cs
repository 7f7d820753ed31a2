namespace RangeMap.Change.Tests.Trends;

/// <summary>
/// The short form of <see cref="ValidationTable"/>: 12 seeds instead of 200. The bounds lie a little beyond what the long table found, so
/// that a method which grows worse fails here.
/// </summary>
public class ValidationTests
{
    private const int Seeds = 12;

    [Fact]
    public void TwiceTheVisitsWithoutChangeRaiseFewFalseAlarms() => AssertFalseAlarms(Tally(Scenarios.TwiceTheVisits), new()
    {
        [ChangeMethods.RelativeIndex] = 0.07,
        [ChangeMethods.NeighbourhoodFrequency] = 0.19,
        [ChangeMethods.ListLength] = 0.06,
        [ChangeMethods.ReportingRate] = 0.07,
        [ChangeMethods.Occupancy] = 0.06,
    });

    [Fact]
    public void ShorterListsWithoutChangeRaiseFewFalseAlarmsButInTheShareOfVisits()
    {
        var tallies = Tally(Scenarios.ShorterLists);
        AssertFalseAlarms(tallies, new()
        {
            [ChangeMethods.RelativeIndex] = 0.07,
            [ChangeMethods.NeighbourhoodFrequency] = 0.12,
            [ChangeMethods.ListLength] = 0.08,
            [ChangeMethods.Occupancy] = 0.05,
        });
        Assert.True(tallies[ChangeMethods.ReportingRate].Down > 0.3, "the page on change says that shorter lists mislead it");
    }

    [Fact]
    public void VisitsTakenAsIndependentMisleadWhereRecordersGoToOtherSquares()
    {
        var tallies = Tally(Scenarios.OtherSquares);
        Assert.True(tallies[IndependentVisits.Method].Telling > 0.065, "the page on the reporting rate says that they do");
        Assert.True(tallies[ChangeMethods.ReportingRate].Telling < 0.065, $"the design effect left {tallies[ChangeMethods.ReportingRate].Telling:P1}");
    }

    [Fact]
    public void ADeclineUnderRisingEffortIsNeverTakenForAnIncreaseAndOftenSeen()
    {
        var tallies = Tally(Scenarios.Decline);
        // The area of occupancy follows the recorders, as the page on change says: under twice the visits it tells of an increase in 2 %.
        Assert.All(tallies.Values.Where(tally => tally.Method != ChangeMethods.OccupancyArea), tally => Assert.True(tally.Up < 0.02, $"{tally.Method} told of an increase in {tally.Up:P0}"));
        AssertAtLeast(0.15, tallies[ChangeMethods.RelativeIndex]);
        AssertAtLeast(0.35, tallies[ChangeMethods.NeighbourhoodFrequency]);
        AssertAtLeast(0.12, tallies[ChangeMethods.ListLength]);
        AssertAtLeast(0.33, tallies[ChangeMethods.ReportingRate]);
        AssertAtLeast(0.18, tallies[ChangeMethods.Occupancy]);
        Assert.True(tallies[ChangeMethods.Occupancy].Holding > 0.85, $"occupancy held the truth in {tallies[ChangeMethods.Occupancy].Holding:P0}");
    }

    private static void AssertFalseAlarms(Dictionary<string, MethodTally> tallies, Dictionary<string, double> most)
    {
        foreach (var (method, bound) in most)
            Assert.True(tallies[method].Given > 500 && tallies[method].Telling <= bound, $"{method} told of change in {tallies[method].Telling:P1} of {tallies[method].Given}, of at most {bound:P0}");
    }

    private static void AssertAtLeast(double least, MethodTally tally) => Assert.True(tally.Down >= least, $"{tally.Method} saw the decline in {tally.Down:P0}, of at least {least:P0}");

    private static Dictionary<string, MethodTally> Tally(SimulatedSurvey world) =>
        ValidationTable.Tally(world, Seeds, taxon => world.Declining == 0 || taxon < world.Declining).ToDictionary(tally => tally.Method, StringComparer.Ordinal);
}
