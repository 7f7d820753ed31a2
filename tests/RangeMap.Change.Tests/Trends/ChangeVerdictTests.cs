namespace RangeMap.Change.Tests.Trends;

public class ChangeVerdictTests
{
    private static readonly EffortChange _doubled = new(Effort("1995/2004", 310, 2000, 4.2), Effort("2010/2019", 340, 4200, 4.5));

    [Fact]
    public void ADeclineHiddenByMoreVisitsIsSaid()
    {
        var verdict = ChangeVerdict.Of([Down(ChangeMethods.Occupancy), Down(ChangeMethods.ListLength), None(ChangeMethods.RelativeIndex), None(ChangeMethods.Squares)], _doubled);
        Assert.StartsWith("Recorders made 2.1 times as many visits in 2010/2019 (4200) as in 1995/2004 (2000), to 340 squares instead of 310, and noted 4.5 taxa a visit instead of 4.2.", verdict, StringComparison.Ordinal);
        Has(verdict, "2 of 3 measures that allow for effort tell of a decline, none of the opposite");
        Has(verdict, "This is good evidence of a decline.");
        Has(verdict, "does not show this (+1.0 %, interval -3.0 to +5.0): more visits find more of the squares that there are, which covers it up.");
    }

    [Fact]
    public void ARiseThatFollowsTheRecordersIsSaid()
    {
        var verdict = ChangeVerdict.Of([None(ChangeMethods.Occupancy), None(ChangeMethods.ListLength), Up(ChangeMethods.Squares), Up(ChangeMethods.Extent)], _doubled);
        Has(verdict, "None of the 2 measures that allow for effort tells of a change. That does not show that there was none.");
        Has(verdict, "leaves room for anything from -3.0 to +5.0 percentage points of the squares");
        Has(verdict, "The plain count of squares rose (+20 %, interval +10 to +30), but so did the number of visits");
    }

    [Fact]
    public void MeasuresThatDisagreeClaimNothing()
    {
        var verdict = ChangeVerdict.Of([Down(ChangeMethods.Occupancy), Up(ChangeMethods.NeighbourhoodFrequency)], _doubled);
        Has(verdict, "disagree: frequency against common taxa nearby tells of an increase, the occupancy model of a decline. No change should be claimed");
        Has(verdict, "A change shared by the whole group does not show");
    }

    [Fact]
    public void OneMeasureOfSeveralIsWeakEvidence() => Has(
        ChangeVerdict.Of([Up(ChangeMethods.Occupancy), None(ChangeMethods.ListLength), None(ChangeMethods.NeighbourhoodFrequency)], _doubled),
        "Of 3 measures that allow for effort 1 tells of an increase, the occupancy model +20 percentage points, interval +10 to +30; the others see nothing beyond chance. This is weak evidence");

    [Fact]
    public void OneMeasureAloneHasNothingToCheckItBy() => Has(
        ChangeVerdict.Of([Down(ChangeMethods.ListLength), Refused(ChangeMethods.Occupancy)], _doubled),
        "Only one measure that allows for effort can be given, lists of equal length; it tells of a decline");

    [Fact]
    public void PlainCountsAloneSayNothing()
    {
        var verdict = ChangeVerdict.Of([Up(ChangeMethods.Squares), Refused(ChangeMethods.Occupancy)], _doubled);
        Has(verdict, "nothing can be said of a change");
        Assert.DoesNotContain("rose", verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void AShareOfVisitsIsSetAsideWhereListsGrewShorter()
    {
        var shorter = _doubled with { After = Effort("2010/2019", 340, 4200, 2.9) };
        var verdict = ChangeVerdict.Of([Down(ChangeMethods.ReportingRate), None(ChangeMethods.Occupancy)], shorter);
        Has(verdict, "The share of visits with the taxon is set aside, because lists have grown shorter.");
        Has(verdict, "The one measure that allows for effort and can be given tells of no change.");
        Has(ChangeVerdict.Of([Down(ChangeMethods.ReportingRate), None(ChangeMethods.Occupancy)], _doubled), "the share of visits");
    }

    [Fact]
    public void MeasuresThatCouldNotBeGivenAreCounted() => Has(
        ChangeVerdict.Of([None(ChangeMethods.ListLength), Refused(ChangeMethods.Occupancy), Refused(ChangeMethods.RelativeIndex)], _doubled),
        "2 of 3 such measures could not be given; each says why.");

    [Fact]
    public void NoEstimatesAndNoEffortStillGiveAVerdict() =>
        Has(ChangeVerdict.Of([], new(Effort("a", 0, 0, 0), Effort("b", 0, 0, 0))), "nothing can be said");

    [Fact]
    public void EffortIsCountedFromTheSurvey()
    {
        var group = Scenarios.TwiceTheVisits.Make(1);
        var effort = EffortChange.Of(group.Survey)!;
        Assert.Equal(group.Survey.Periods[0].Visits.All.Length, effort.Before.Visits);
        Assert.InRange(effort.After.Visits / (double)effort.Before.Visits, 1.7, 2.4);
        Assert.InRange(effort.After.Squares, effort.Before.Squares - 20, 400);
        Assert.Null(EffortChange.Of(new GroupSurvey([], 1, [])));
    }

    private static void Has(string verdict, string words) => Assert.Contains(words, verdict, StringComparison.Ordinal);

    private static ChangeEstimate Up(string method) => Given(method, 20, 10, 30);

    private static ChangeEstimate Down(string method) => Given(method, -20, -30, -10);

    private static ChangeEstimate None(string method) => Given(method, 1, -3, 5);

    private static ChangeEstimate Given(string method, double value, double low, double high) =>
        ChangeEstimate.Of(0, method, method is ChangeMethods.Squares or ChangeMethods.NeighbourhoodFrequency ? "%" : "percentage points", 300, value, new(low, high));

    private static ChangeEstimate Refused(string method) => ChangeEstimate.Refuse(0, method, "", 3, "Not enough squares.");

    private static EffortSummary Effort(string period, int squares, int visits, double listLength) =>
        new(period, visits, 40, (long)(visits * listLength), squares, squares / 2, listLength);
}
