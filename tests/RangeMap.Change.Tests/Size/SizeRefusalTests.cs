using CsCheck;

namespace RangeMap.Change.Tests.Size;

/// <summary>Where the data cannot carry a measure there is a sentence, never NaN, infinity or an exception.</summary>
public class SizeRefusalTests
{
    private static readonly SurveySquare[] _board = Surveys.Board(40, 40);

    [Fact]
    public void OnePeriodHasNoChange()
    {
        var two = Surveys.OfOne(_board, [1], [1]);
        AssertAllRefused("There are fewer than two periods, so there is no change to measure.", new(_board, 1, [two.Periods[0]]));
        AssertAllRefused("There are fewer than two periods, so there is no change to measure.", new([], 1, []));
    }

    [Fact]
    public void ATaxonWithoutFindsAndASurveyWithoutSquaresHaveNoChange()
    {
        AssertAllRefused("Not found in either period.", Surveys.OfOne(_board, [], []));
        AssertAllRefused("Not found in either period.", Surveys.OfOne([], [], []));
    }

    [Fact]
    public void OneSquareIsTooFewAndItsCountsStand()
    {
        var estimates = RangeSizeChange.Measure(Surveys.OfOne(_board, [7], [7]), 0, new());
        Assert.All(estimates, AssertNumbersOrSentence);
        Assert.All(estimates, estimate => Assert.NotNull(estimate.Refused));
        Assert.Equal("Found in 1 square in the earlier period; a percentage needs at least 5.", estimates[0].Refused);
        Assert.Equal((1, 1), (estimates[0].Before, estimates[0].After));
        Assert.Equal(100, estimates[3].Before!.Value, 9);
    }

    [Fact]
    public void ARangeInsideOneBlockIsRefused() => Assert.Equal(
        "Its squares lie in 1 block of 100 km; telling chance from change needs at least 4.",
        Surveys.OfOne(_board, [0, 1, 2, 40, 41, 42], [0, 1, 2, 40, 41]).By(ChangeMethods.Squares).Refused);

    [Fact]
    public void AllSquaresInBothPeriodsIsNoChange()
    {
        var estimates = RangeSizeChange.Measure(Surveys.OfOne(_board, Enumerable.Range(0, 1600), Enumerable.Range(0, 1600)), 0, new());
        Assert.All(estimates, estimate =>
        {
            AssertNumbersOrSentence(estimate);
            Assert.Equal(0, estimate.Value!.Value, 1e-9);
            Assert.False(estimate.TellsChange);
            Assert.True(estimate.High > estimate.Low);
        });
    }

    [Fact]
    public void FindsWithoutAnyVisitStillHaveRawCounts()
    {
        var survey = Surveys.Visited(_board, 1, Surveys.One(Enumerable.Range(0, 800)), Surveys.One(Enumerable.Range(400, 1200)), _ => false, _ => false);
        Assert.NotNull(survey.By(ChangeMethods.Squares).Value);
        Assert.Equal((400, 0.0), (survey.By(ChangeMethods.SquaresBoth).N, survey.By(ChangeMethods.SquaresBoth).Value));
        Assert.Equal("No square was well surveyed in both periods.", survey.By(ChangeMethods.SquaresSurveyed).Refused);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void ASquareWithoutAPlaceIsSaid(double x) => AssertAllRefused(
        "A square of the survey has no place or no area on its plane.", Surveys.OfOne([.. _board, SurveySquare.Upright(x, 0, 10)], [1], [1]));

    [Fact]
    public void HugeCoordinatesGiveNumbersOrASentence() => Assert.All(
        RangeSizeChange.Measure(Surveys.OfOne(Surveys.Board(20, 20, west: 1e12, south: -1e12), Enumerable.Range(0, 200), Enumerable.Range(100, 300)), 0, new()), AssertNumbersOrSentence);

    [Fact]
    public void ATaxonThatTheSurveyDoesNotHaveAndOptionsOutOfRangeAreErrorsOfTheCaller()
    {
        var survey = Surveys.OfOne(_board, [1], [1]);
        Assert.Throws<ArgumentOutOfRangeException>(() => RangeSizeChange.Measure(survey, 1, new()));
        Assert.Throws<ArgumentOutOfRangeException>(() => RangeSizeChange.Measure(survey, -1, new()));
        Assert.Throws<ArgumentOutOfRangeException>(() => RangeSizeChange.Measure(survey, 0, new() { MinimumBlocks = 1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => RangeSizeChange.Measure(survey, 0, new() { MarginBearing = 360 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => AlphaHull.Measure(survey, 0, new(), 1));
    }

    [Fact]
    public void WhateverWasFoundGivesNumbersOrSentences() =>
        Gen.Select(Gen.Int[0, 1599].Array[0, 60], Gen.Int[0, 1599].Array[0, 60], Gen.Int[1, 9], Gen.Int[1, 9]).Sample(
            (before, after, thinBefore, thinAfter) =>
            {
                var finds = (before.Distinct().Select(s => (s, 0, 1 + s % thinBefore)), after.Distinct().Select(s => (s, 0, 1 + s % thinAfter)));
                var survey = Surveys.Visited(_board, 1, finds.Item1, finds.Item2, s => s % thinBefore == 0, s => s % thinAfter == 0);
                var options = new ChangeOptions { MinimumBlocks = 2, MinimumSquares = 1, MinimumMarginSquares = 10, Draws = 100, BlockDraws = 100 };
                Assert.All(RangeSizeChange.Measure(survey, 0, options), AssertNumbersOrSentence);
                AssertNumbersOrSentence(AlphaHull.Measure(survey, 0, options));
            },
            iter: 60);

    private static void AssertAllRefused(string reason, GroupSurvey survey)
    {
        var estimates = RangeSizeChange.Measure(survey, 0, new());
        Assert.Equal(RangeSizeChange.Methods, estimates.Select(estimate => estimate.Method));
        Assert.All(estimates, estimate => Assert.Equal(reason, estimate.Refused));
        Assert.All(estimates, AssertNumbersOrSentence);
    }

    private static void AssertNumbersOrSentence(ChangeEstimate estimate)
    {
        var numbers = new[] { estimate.Value, estimate.Low, estimate.High };
        Assert.All(numbers, number => Assert.Equal(estimate.Refused is null, number is not null));
        Assert.All([.. numbers, estimate.Before, estimate.After], number => Assert.True(number is null || double.IsFinite(number.Value)));
        Assert.True(estimate.Refused is null || estimate.Refused.EndsWith('.'));
        Assert.True(estimate.Refused is not null || (estimate.Low <= estimate.Value && estimate.Value <= estimate.High));
    }
}
