using CsCheck;

namespace RangeMap.Change.Tests.Size;

public class SquareFateTests
{
    private static readonly SurveySquare[] _board = Surveys.Board(6, 1);

    [Fact]
    public void ASquareThatNobodySurveyedIsNeitherLostNorGained()
    {
        // Square 0 kept, 1 lost, 2 not searched later, 3 gained, 4 not searched before, 5 never found.
        var survey = Surveys.Visited(_board, 1, Surveys.One([0, 1, 2]), Surveys.One([0, 3, 4]), square => square != 4, square => square != 2);
        Assert.Equal(
            [(0, SquareFate.Kept), (1, SquareFate.Lost), (2, SquareFate.NotSurveyedAfter), (3, SquareFate.Gained), (4, SquareFate.NotSurveyedBefore)],
            SquareFates.Of(survey, 0));
    }

    [Fact]
    public void ARecordOfAnotherTaxonWithoutAVisitCountsAsSurveyed()
    {
        var survey = Surveys.Visited(_board, 2, [(2, 0, 1)], [(2, 1, 1)], _ => false, _ => false);
        Assert.Equal([(2, SquareFate.Lost)], SquareFates.Of(survey, 0));
    }

    [Fact]
    public void OnePeriodHasNoFates()
    {
        Assert.Empty(SquareFates.Of(new(_board, 1, [Surveys.OfOne(_board, [1], []).Periods[0]]), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SquareFates.Of(Surveys.OfOne(_board, [1], []), 1));
    }

    // Three taxa kept, one lost, two gained; the indices by hand.
    [Fact]
    public void TaxaOfASquareAreComparedBetweenPeriods()
    {
        var turnover = Turnover(Surveys.Visited(_board, 6, Taxa(0, 1, 2, 3), Taxa(0, 1, 2, 4, 5)));
        Assert.Equal([0, 1, 2], turnover.Kept);
        Assert.Equal([3], turnover.Lost);
        Assert.Equal([4, 5], turnover.Gained);
        Assert.Equal(6 / 9.0, turnover.Sorensen!.Value, 12);
        Assert.Equal(0.5, turnover.Jaccard!.Value, 12);
        Assert.Equal(0.25, turnover.Turnover!.Value, 12);
        Assert.Equal(1 - 6 / 9.0 - 0.25, turnover.Nestedness!.Value, 12);
    }

    [Fact]
    public void AShorterListOfTheSameTaxaIsNestedAndOtherTaxaAreReplaced()
    {
        var nested = Turnover(Surveys.Visited(_board, 6, Taxa(0, 1, 2, 3), Taxa(0, 1)));
        Assert.Equal(0, nested.Turnover);
        Assert.Equal(1 / 3.0, nested.Nestedness!.Value, 12);
        var replaced = Turnover(Surveys.Visited(_board, 6, Taxa(0, 1), Taxa(2, 3)));
        Assert.Equal((1, 0, 0), (replaced.Turnover, replaced.Nestedness, replaced.Sorensen));
    }

    [Fact]
    public void ASquareWithTooLittleEffortHasListsButNoIndices()
    {
        var turnover = Turnover(Surveys.Visited(_board, 6, Taxa(0, 1), Taxa(1, 2), visitedAfter: _ => false));
        Assert.Equal("Not well surveyed in the later period: 0 visits, coverage 0.00.", turnover.Refused);
        Assert.Equal([1], turnover.Kept);
        Assert.Null(turnover.Sorensen ?? turnover.Jaccard ?? turnover.Turnover ?? turnover.Nestedness);
    }

    [Fact]
    public void IndicesAreSharesAndPartsSumToTheWhole() => Gen.Select(Gen.Int[0, 9].Array[1, 8], Gen.Int[0, 9].Array[1, 8]).Sample((before, after) =>
    {
        var turnover = Turnover(Surveys.Visited(_board, 10, Taxa([.. before.Distinct()]), Taxa([.. after.Distinct()])));
        foreach (var index in new[] { turnover.Sorensen, turnover.Jaccard, turnover.Turnover, turnover.Nestedness })
            Assert.InRange(index!.Value, -1e-12, 1 + 1e-12);
        Assert.Equal(1, (turnover.Sorensen + turnover.Turnover + turnover.Nestedness)!.Value, 12);
    });

    private static IEnumerable<(int, int, int)> Taxa(params int[] taxa) => taxa.Select(taxon => (3, taxon, 1));

    private static SquareTurnover Turnover(GroupSurvey survey) =>
        SquareTurnover.Of(survey, 3, EffortTable.Of(survey, survey.Periods[0]), EffortTable.Of(survey, survey.Periods[1]));
}
