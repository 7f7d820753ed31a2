using CsCheck;

namespace RangeMap.Change.Tests.Size;

public class OccupancyTests
{
    // Both ends are figures of the IUCN Guidelines for Using the Red List Categories and Criteria, section 4.10: one square of 10 km is
    // 25 cells of 2 km where C is 0, and one cell where C is 1.
    [Theory]
    [InlineData(0, 25)]
    [InlineData(1, 1)]
    public void OneSquareOfTenKilometresIsTwentyFiveCellsOrOne(double slope, int cells) =>
        Assert.Equal(cells * 4, AreaOfOccupancy.At2Km(10, 1, slope), 9);

    [Fact]
    public void FullCellsHaveSlopeNoughtAndLoneSquaresSlopeOne()
    {
        Assert.Equal(0, AreaOfOccupancy.Slope(10, 40, 20, 10), 12);
        Assert.Equal(1, AreaOfOccupancy.Slope(10, 40, 20, 40), 12);
        Assert.Equal(0.5, AreaOfOccupancy.Slope(10, 40, 20, 20), 12);
    }

    [Fact]
    public void CountsAtSeveralScalesUseTheTwoFinestAndCellsOfTwoKilometresAreCounted()
    {
        Assert.Equal(AreaOfOccupancy.At2Km(10, 40, 0.5), AreaOfOccupancy.At2Km([(50, 9), (20, 20), (10, 40)]), 9);
        Assert.Equal(48, AreaOfOccupancy.At2Km([(10, 5), (2, 12)]), 9);
        Assert.Equal(0, AreaOfOccupancy.At2Km([(10, 0), (20, 0)]));
        Assert.Throws<ArgumentException>(() => AreaOfOccupancy.At2Km([(10, 5)]));
    }

    [Fact]
    public void SharesSumToTheNumberOfCells() => Gen.Int[0, 143].Array[1, 100].Sample(drawn =>
    {
        var (squares, board) = (drawn.Distinct().Order().ToArray(), Surveys.Board(12, 12));
        var (x, y) = (board.Select(s => s.Centre.X).ToArray(), board.Select(s => s.Centre.Y).ToArray());
        var shares = OccupancyCells.Of(x, y, 10).Shares(squares, [.. squares.Select(_ => 1)]);
        var cells = new[] { (0, 0), (1, 0), (0, 1), (1, 1) }.Average(laid => squares.Select(s => ((s % 12 + laid.Item1) / 2, (s / 12 + laid.Item2) / 2)).Distinct().Count());
        Assert.Equal(cells, shares.Sum(), 9);
    });

    [Fact]
    public void SquaresOfOneKilometreAreCountedInCellsOfTwo()
    {
        var board = Surveys.Board(40, 40, side: 1);
        var estimate = Surveys.OfOne(board, Enumerable.Range(0, 1600).Where(i => i % 40 < 20), Enumerable.Range(0, 1600)).By(ChangeMethods.OccupancyArea);
        Assert.Equal((800, 1600), (estimate.Before, estimate.After));
        Assert.Equal(100, estimate.Value!.Value, 9);
    }

    [Fact]
    public void AFullRangeKeepsItsAreaAndAScatteredOneHasFarLess()
    {
        // Squares of 10 km on every fourth place lie alone in every cell of 20 km: C is 1, one cell of 2 km each.
        var board = Surveys.Board(40, 40);
        var scattered = Enumerable.Range(0, 1600).Where(i => i % 40 % 4 == 1 && i / 40 % 4 == 1).ToArray();
        var estimate = Surveys.OfOne(board, scattered, Enumerable.Range(0, 1600)).By(ChangeMethods.OccupancyArea);
        Assert.Equal(400, estimate.Before!.Value, 6);
        // Cells laid across the edge of the full board hold fewer squares, so C is a little above 0.
        Assert.InRange(estimate.After!.Value, 120_000, 160_000);
    }
}
