using CsCheck;

namespace RangeMap.Change.Tests.Trends;

public class EffortCorrectedChangeTests
{
    private static readonly string[] _methods =
        [ChangeMethods.RelativeIndex, ChangeMethods.NeighbourhoodFrequency, ChangeMethods.ListLength, ChangeMethods.ReportingRate, ChangeMethods.Occupancy];

    private static readonly SimulatedGroup _decline = Scenarios.Decline.Make(1);

    [Fact]
    public void EveryTaxonHasEveryMethodInItsOrder()
    {
        var all = EffortCorrectedChange.Measure(_decline.Survey, new());
        Assert.Equal(Enumerable.Range(0, 60).SelectMany(taxon => _methods.Select(method => (taxon, method))), all.Select(e => (e.Taxon, e.Method)));
        Assert.All(all, AssertWhole);
        Assert.Contains(all, estimate => estimate.Method == ChangeMethods.Occupancy && estimate.Value is not null);
    }

    [Fact]
    public void OneTaxonAskedForByItselfHasTheNumbersThatAllTogetherHave()
    {
        var prepared = EffortCorrectedChange.Prepare(_decline.Survey, new());
        Assert.Equal(EffortCorrectedChange.Measure(_decline.Survey, new()).Where(e => e.Taxon == 7), prepared.Of(7));
        Assert.Throws<ArgumentOutOfRangeException>(() => prepared.Of(60));
        Assert.Throws<ArgumentOutOfRangeException>(() => prepared.Of(-1));
    }

    [Fact]
    public void RenumberedTaxaKeepTheirNumbers()
    {
        var renumbered = Surveys.Renumbered(_decline.Survey, taxon => (taxon * 7 + 3) % 60);
        AssertSame(EffortCorrectedChange.Measure(_decline.Survey, new()), EffortCorrectedChange.Measure(renumbered, new()), taxon => (taxon * 7 + 3) % 60);
    }

    [Fact]
    public void SquaresWhereNobodyWentChangeNothing()
    {
        var larger = Surveys.WithEmptySquares(_decline.Survey, 150);
        AssertSame(EffortCorrectedChange.Measure(_decline.Survey, new()), EffortCorrectedChange.Measure(larger, new()), taxon => taxon);
    }

    [Fact]
    public void AMapMovedElsewhereChangesNothing()
    {
        var moved = Surveys.Moved(_decline.Survey, 1230, -450);
        AssertSame(EffortCorrectedChange.Measure(_decline.Survey, new()), EffortCorrectedChange.Measure(moved, new()), taxon => taxon);
    }

    [Fact]
    public void PeriodsExchangedTurnChangeRound()
    {
        var there = EffortCorrectedChange.Measure(_decline.Survey, new());
        var back = EffortCorrectedChange.Measure(Surveys.Exchanged(_decline.Survey), new());
        foreach (var (a, b) in there.Zip(back).Where(pair => pair.First.Value is not null && pair.Second.Value is not null))
        {
            if (a.Method is ChangeMethods.ReportingRate)
                Assert.Equal(a.Value!.Value, -b.Value!.Value, 1e-9);
            // The slope on the years is not exchanged with the periods, the years being those of the visits.
            if (a.Method is ChangeMethods.ListLength)
                Assert.Equal(a.Value!.Value, b.Value!.Value, 1e-9);
            if (a.Method is ChangeMethods.NeighbourhoodFrequency)
                Assert.Equal(1, (1 + a.Value!.Value / 100) * (1 + b.Value!.Value / 100), 1e-9);
        }
    }

    [Fact]
    public void FewerThanTwoPeriodsAreRefused()
    {
        var one = new GroupSurvey(_decline.Survey.Squares, 60, [_decline.Survey.Periods[0]]);
        Assert.All(EffortCorrectedChange.Measure(one, new()), estimate => Assert.Equal(TrendWords.OnePeriod, estimate.Refused));
        Assert.Equal(300, EffortCorrectedChange.Measure(one, new()).Count);
    }

    [Fact]
    public void AnySmallSurveyGivesNumbersOrReasons() => Surveys.Any.Sample(survey =>
    {
        var all = EffortCorrectedChange.Measure(survey, Surveys.Lenient);
        Assert.Equal(survey.Taxa * _methods.Length, all.Count);
        Assert.All(all, AssertWhole);
    }, iter: 150);

    [Fact]
    public void ConditionsOutsideTheirRangeAreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EffortCorrectedChange.Prepare(_decline.Survey, new() { Trends = new() { LeastTaxaRelative = 4 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => EffortCorrectedChange.Prepare(_decline.Survey, new() { Trends = new() { StandardFrequency = 1 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => EffortCorrectedChange.Prepare(_decline.Survey, new() { Trends = new() { LeastDetection = double.NaN } }));
    }

    private static void AssertWhole(ChangeEstimate estimate)
    {
        Assert.Equal(estimate.Refused is null, estimate.Value is not null);
        Assert.EndsWith(".", estimate.Refused ?? estimate.Note, StringComparison.Ordinal);
        if (estimate.Value is not { } value)
            return;
        Assert.True(double.IsFinite(value) && double.IsFinite(estimate.Low!.Value) && double.IsFinite(estimate.High!.Value));
        Assert.True(estimate.Low <= value + 1e-9 && value <= estimate.High + 1e-9, $"{estimate}");
        Assert.InRange(estimate.P!.Value, 0, 1);
        if (Math.Abs(estimate.P.Value - 0.05) > 1e-6)
            Assert.Equal(estimate.TellsChange, estimate.P < 0.05);
    }

    private static void AssertSame(IReadOnlyList<ChangeEstimate> expected, IReadOnlyList<ChangeEstimate> actual, Func<int, int> number)
    {
        var byTaxon = actual.ToDictionary(estimate => (estimate.Taxon, estimate.Method));
        foreach (var estimate in expected)
        {
            var same = byTaxon[(number(estimate.Taxon), estimate.Method)];
            Assert.Equal(estimate.Refused, same.Refused);
            Assert.Equal(estimate.Value ?? 0, same.Value ?? 0, 1e-6);
            Assert.Equal(estimate.Low ?? 0, same.Low ?? 0, 1e-6);
            Assert.Equal(estimate.High ?? 0, same.High ?? 0, 1e-6);
        }
    }
}
