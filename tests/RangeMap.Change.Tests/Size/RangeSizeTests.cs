namespace RangeMap.Change.Tests.Size;

/// <summary>The three counts of squares, the centroid, and what all methods of size have in common.</summary>
public class RangeSizeTests
{
    // 40 by 40 squares are 16 blocks of 100 km.
    private static readonly SurveySquare[] _board = Surveys.Board(40, 40);
    private static readonly int[] _south = [.. Enumerable.Range(0, 1600).Where(i => i / 40 < 20)];
    private static readonly int[] _most = [.. Enumerable.Range(0, 1600).Where(i => i / 40 < 30)];

    [Fact]
    public void AllElevenMethodsComeInTheirOrder() =>
        Assert.Equal(RangeSizeChange.Methods, RangeSizeChange.Measure(Surveys.OfOne(_board, _south, _most), 0, new()).Select(e => e.Method));

    [Fact]
    public void HalfAsManySquaresAgainIsFiftyPercentInsideItsInterval()
    {
        foreach (var method in new[] { ChangeMethods.Squares, ChangeMethods.SquaresBoth, ChangeMethods.Extent })
        {
            var estimate = Surveys.OfOne(_board, _south, _most).By(method);
            Assert.Equal(50, estimate.Value!.Value, 9);
            Assert.True(estimate.Low < 50 && estimate.High > 50);
        }
    }

    [Fact]
    public void ASquareThatNobodyVisitedLaterIsLostToTheRawCountAlone()
    {
        // Nobody goes to the northern half later.
        var survey = Surveys.Visited(_board, 1, Surveys.One(_most), Surveys.One(_south), visitedAfter: square => square / 40 < 20);
        Assert.Equal(-100 / 3.0, survey.By(ChangeMethods.Squares).Value!.Value, 9);
        var both = survey.By(ChangeMethods.SquaresBoth);
        Assert.Equal((0, 800, 800.0, 800.0), (both.Value, both.N, both.Before, both.After));
        Assert.True(both.Low < 0 && both.High > 0);
        Assert.Contains("it was in every square compared", both.Note, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void WellSurveyedSquaresAreComparedAmongThemselvesOnly()
    {
        // Each of six lists has the one taxon where it is: full coverage there; lists without a taxon cover nothing.
        var survey = Surveys.OfOne(_board, _south, _most);
        Assert.Equal(800, survey.By(ChangeMethods.SquaresSurveyed).N);
        Assert.Equal(0, survey.By(ChangeMethods.SquaresSurveyed).Value!.Value, 9);
        Assert.Equal("No square was well surveyed in both periods.", survey.By(ChangeMethods.SquaresSurveyed, new() { WellSurveyedVisits = 7 }).Refused);
    }

    [Fact]
    public void SquaresWithoutEffortChangeNothingAmongThoseSurveyedInBoth()
    {
        var plain = Surveys.OfOne(_board, _south, _most).By(ChangeMethods.SquaresBoth);
        SurveySquare[] more = [.. _board, .. Surveys.Board(5, 40, west: 900)];
        var wider = Surveys.Visited(more, 1, Surveys.One(_south), Surveys.One(_most), square => square < 1600, square => square < 1600).By(ChangeMethods.SquaresBoth);
        Assert.Equal(plain, wider);
    }

    [Fact]
    public void SwappingThePeriodsTurnsTheRatioAbout()
    {
        foreach (var method in new[] { ChangeMethods.Squares, ChangeMethods.SquaresBoth, ChangeMethods.Extent, ChangeMethods.OccupancyArea })
        {
            var (there, back) = (Surveys.OfOne(_board, _south, _most).By(method), Surveys.OfOne(_board, _most, _south).By(method));
            Assert.Equal(1, (1 + there.Value!.Value / 100) * (1 + back.Value!.Value / 100), 9);
            Assert.Equal(1, (1 + there.Low!.Value / 100) * (1 + back.High!.Value / 100), 1e-6);
            Assert.Equal(1, (1 + there.High!.Value / 100) * (1 + back.Low!.Value / 100), 1e-6);
        }
    }

    [Fact]
    public void TheIntervalIsNeverNarrowerThanIndependentSquaresWouldMakeIt()
    {
        // The same squares in both periods: drawing blocks sees no change at all.
        var estimate = Surveys.OfOne(_board, _south, _south).By(ChangeMethods.Squares);
        Assert.Equal(0, estimate.Value);
        // t of 7 degrees of freedom (8 blocks) is 2.364624; the standard error is 1 / 800.5.
        Assert.Equal(100 * (Math.Exp(2.364624 / 800.5) - 1), estimate.High!.Value, 1e-6);
        Assert.False(estimate.TellsChange);
    }

    [Fact]
    public void ATaxonThatIsGoneHasLostAHundredPercent()
    {
        var estimate = Surveys.OfOne(_board, _south, []).By(ChangeMethods.SquaresBoth);
        Assert.Equal(-100, estimate.Value!.Value, 9);
        Assert.Equal(-100, estimate.Low!.Value, 9);
        Assert.InRange(estimate.High!.Value, -100, -90);
    }

    [Fact]
    public void TheMiddleMovesByTheMeanOfItsSquares()
    {
        var estimate = Surveys.OfOne(_board, _south, _most).By(ChangeMethods.Centroid);
        Assert.Equal(50, estimate.Value!.Value, 9);
        Assert.StartsWith("Towards 0 degrees.", estimate.Note, StringComparison.Ordinal);
        Assert.True(estimate.Low >= 0);
        Assert.Equal(new PlanePoint(400, 200), RangeCentroid.Of(Surveys.OfOne(_board, _south, _most), Surveys.OfOne(_board, _south, _most).Periods[0], 0));
    }

    [Fact]
    public void AMiddleThatStaysIsNoChange()
    {
        var estimate = Surveys.OfOne(_board, _south, _south).By(ChangeMethods.Centroid);
        Assert.Equal((0, 0), (estimate.Value, estimate.Low));
        Assert.True(estimate.High > 0);
        Assert.False(estimate.TellsChange);
    }

    [Fact]
    public void ShiftingTheMapChangesNoEstimate()
    {
        var shifted = Surveys.Board(40, 40, west: 620, south: 1040);
        var (here, there) = (RangeSizeChange.Measure(Surveys.OfOne(_board, _south, _most), 0, new()), RangeSizeChange.Measure(Surveys.OfOne(shifted, _south, _most), 0, new()));
        foreach (var (a, b) in here.Zip(there))
        {
            Assert.Equal((a.Method, a.N, a.Refused), (b.Method, b.N, b.Refused));
            Assert.Equal(a.Value ?? 0, b.Value ?? 0, 1e-6);
            Assert.Equal(a.Low ?? 0, b.Low ?? 0, 1e-6);
            Assert.Equal(a.High ?? 0, b.High ?? 0, 1e-6);
        }
    }

    [Fact]
    public void TheSameSeedGivesTheSameNumbersAndAnotherMovesTheIntervalOnly()
    {
        var scattered = Enumerable.Range(0, 1600).Where(i => i * 7919 % 13 < 6).ToArray();
        var first = Surveys.OfOne(_board, _most, scattered).By(ChangeMethods.Squares);
        Assert.Equal(first, Surveys.OfOne(_board, _most, scattered).By(ChangeMethods.Squares));
        var other = Surveys.OfOne(_board, _most, scattered).By(ChangeMethods.Squares, new() { Seed = 2 });
        Assert.Equal(first.Value, other.Value);
        Assert.NotEqual(first.Low, other.Low);
    }

    [Fact]
    public void TaxaMeasuredSideBySideHaveTheNumbersThatTheyHaveOneByOne()
    {
        IEnumerable<(int, int, int)> Finds(int step) => Enumerable.Range(0, 24).SelectMany(taxon => _most.Where(i => i * 7919 % 31 < 3 + taxon / step).Select(i => (i, taxon, 1 + i % 3)));
        var (one, other) = (Surveys.Visited(_board, 24, Finds(1), Finds(2)), Surveys.Visited(_board, 24, Finds(1), Finds(2)));
        var options = new ChangeOptions();
        var alone = Enumerable.Range(0, 24).Select(taxon => RangeSizeChange.Measure(one, taxon, options)).ToArray();
        var together = Enumerable.Range(0, 24).AsParallel().AsOrdered().Select(taxon => RangeSizeChange.Measure(other, taxon, options)).ToArray();
        Assert.Equal(alone.SelectMany(e => e), together.SelectMany(e => e));
    }

    [Fact]
    public void TheAlphaHullOfAHalfRangeGrowsByAHalf()
    {
        var estimate = AlphaHull.Measure(Surveys.OfOne(_board, _south, _most), 0, new());
        Assert.Equal(50, estimate.Value!.Value, 6);
        Assert.Equal((80000, 120000), (Math.Round(estimate.Before!.Value), Math.Round(estimate.After!.Value)));
        Assert.True(estimate.Low < 50 && estimate.High > 50);
    }
}
