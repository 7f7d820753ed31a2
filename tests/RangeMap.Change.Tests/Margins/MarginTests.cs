namespace RangeMap.Change.Tests.Margins;

public class MarginTests
{
    private static readonly string[] _four = [ChangeMethods.MarginNorth, ChangeMethods.MarginSouth, ChangeMethods.MarginEast, ChangeMethods.MarginWest];
    private static readonly int[] _afterTurn = [3, 2, 0, 1];
    private static readonly SurveySquare[] _board = Surveys.Board(20, 20);

    // A range that stands askew in the board, so that no two directions are alike; the later one reaches two rows further north.
    private static readonly int[] _before = [.. Enumerable.Range(0, 400).Where(i => i / 20 < 4 + i % 20 / 3 && i % 20 > 1)];
    private static readonly int[] _after = [.. Enumerable.Range(0, 400).Where(i => i / 20 < 6 + i % 20 / 3 && i % 20 > 1)];

    [Fact]
    public void ARangeTwoRowsTallerMovesItsNorthernMarginByTwentyKilometres()
    {
        var survey = Surveys.Visited(_board, 2, Levelled(_before, 0), Levelled(_after, _after.Length - _before.Length));
        var north = survey.By(ChangeMethods.MarginNorth);
        Assert.Equal(20, north.Value!.Value, 9);
        Assert.Equal(20, (north.After - north.Before)!.Value, 9);
        Assert.True(north.Low < 20 && north.High > 20);
        Assert.Equal(0, survey.By(ChangeMethods.MarginSouth).Value!.Value, 9);
    }

    [Fact]
    public void TheMarginIsTheMeanOfTheTenOutermostSquares()
    {
        var survey = Surveys.OfOne(_board, _before, _before);
        var north = survey.By(ChangeMethods.MarginNorth);
        var expected = _before.Select(i => i / 20).OrderDescending().Take(10).Average() * 10 + 105;
        Assert.Equal((0, expected), (north.Value, north.Before));
        Assert.Equal("Both periods have equally many records of the group.", north.Note);
    }

    [Fact]
    public void MirroringSwapsNorthAndSouthAndTurningMovesEachDirectionOn()
    {
        var plain = Shifts(i => i);
        var mirrored = Shifts(i => (19 - i / 20) * 20 + i % 20);
        // A quarter turn to the left: north becomes west, west south, south east, east north.
        var turned = Shifts(i => i % 20 * 20 + 19 - i / 20);
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(plain[i], mirrored[i < 2 ? 1 - i : i], 9);
            Assert.Equal(plain[i], turned[_afterTurn[i]], 9);
        }

        static double[] Shifts(Func<int, int> move)
        {
            var survey = Surveys.Visited(_board, 2, Levelled(_before.Select(move), 0), Levelled(_after.Select(move), _after.Length - _before.Length));
            return [.. _four.Select(method => survey.By(method, new() { MinimumBlocks = 2 }).Value!.Value)];
        }
    }

    [Fact]
    public void MoreRecordsOfTheSameRangeMoveNoMargin()
    {
        // Every square of the range, but in the earlier period a few records only, so that rows at the margin were missed: what all records of the
        // later period show as an advance is gone once both are levelled.
        var chance = new Pcg(3);
        var found = _after.Where(_ => chance.NextChance(0.3)).ToArray();
        var survey = Surveys.Visited(_board, 1, Surveys.One(found), _after.Select(i => (i, 0, 1)));
        var north = survey.By(ChangeMethods.MarginNorth);
        var raw = _after.Select(i => i / 20).OrderDescending().Take(10).Average() - found.Select(i => i / 20).OrderDescending().Take(10).Average();
        Assert.True(raw * 10 > 10);
        Assert.InRange(Math.Abs(north.Value!.Value), 0, 7);
        Assert.False(north.TellsChange);
        Assert.Contains($"thinned to {found.Length} of the group's {_after.Length}, 500 times", north.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void TheGammaMarginAdvancesWithTheFrontAndCanLookAnyWay()
    {
        var survey = Surveys.Visited(_board, 2, Levelled(_before, 0), Levelled(_after, _after.Length - _before.Length));
        var options = new ChangeOptions { MinimumBlocks = 2 };
        Assert.InRange(survey.By(ChangeMethods.MarginGamma, options).Value!.Value, 10, 40);
        Assert.InRange(survey.By(ChangeMethods.MarginGamma, options with { MarginBearing = 90 }).Value!.Value, -3, 3);
        var distances = _before.Select(i => i / 20 * 10.0 + 5).ToArray();
        Assert.Equal(GammaFit.To(distances).Quantile(0.95), survey.By(ChangeMethods.MarginGamma, options).Before!.Value, 1e-9);
    }

    [Fact]
    public void AMarginAtTheLastLandIsSaidToBeThere()
    {
        var (all, land) = (Enumerable.Range(0, 400).ToArray(), _board.Select(square => square.Centre).ToArray());
        var survey = Surveys.OfOne(_board, _before, all);
        Assert.Contains("this margin can move no further out", survey.By(ChangeMethods.MarginNorth, new() { LandSquares = land }).Note, StringComparison.Ordinal);
        Assert.DoesNotContain("no further out", survey.By(ChangeMethods.MarginNorth).Note, StringComparison.Ordinal);
        PlanePoint[] more = [.. land, .. Surveys.Board(20, 5, south: 300).Select(square => square.Centre)];
        Assert.DoesNotContain("no further out", survey.By(ChangeMethods.MarginNorth, new() { LandSquares = more }).Note, StringComparison.Ordinal);
        Assert.Contains("no further out", survey.By(ChangeMethods.MarginSouth, new() { LandSquares = more }).Note, StringComparison.Ordinal);
    }

    [Fact]
    public void FewSquaresOrOneStripHaveNoMargin()
    {
        Assert.Equal(
            "Found in 12 squares in the earlier period and 30 in the later; a margin needs at least 20 in each.",
            Surveys.OfOne(_board, Enumerable.Range(0, 12), Enumerable.Range(0, 30)).By(ChangeMethods.MarginNorth).Refused);
        var column = Enumerable.Range(0, 400).Where(i => i % 20 < 2).ToArray();
        Assert.Equal(
            "Its squares lie in 1 strip 60 km wide; telling chance from change needs at least 4.",
            Surveys.OfOne(_board, column, column).By(ChangeMethods.MarginNorth).Refused);
    }

    [Fact]
    public void LevellingThatLeavesTooLittleIsSaid()
    {
        // The group's later records are a hundred times as many, of which the taxon keeps hardly any.
        var others = Enumerable.Range(0, 400).Select(i => (i, 1, 500));
        var survey = Surveys.Visited(_board, 2, Surveys.One(_before), Surveys.One(_after).Concat(others));
        Assert.Equal("With the recording of both periods levelled too few squares are left for a margin.", survey.By(ChangeMethods.MarginNorth).Refused);
    }

    // A second taxon brings the records of both periods to the same number, so that nothing is thinned.
    private static IEnumerable<(int, int, int)> Levelled(IEnumerable<int> squares, int fewer) => Surveys.One(squares).Append((0, 1, 1000 - fewer));
}
