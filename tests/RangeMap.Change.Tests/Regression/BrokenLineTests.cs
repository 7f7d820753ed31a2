namespace RangeMap.Change.Tests;

public class BrokenLineTests
{
    // Invented series; results computed with R 4.2.2 and segmented 1.6-2.
    [Fact]
    public void TwoPiecesMeetWhereTheSpreadQuickens()
    {
        double[] t = [.. Enumerable.Range(0, 12)];
        double[] y = [2, 4.1, 5.9, 8.2, 10, 12.1, 17, 22.2, 26.9, 32, 37.1, 42];
        var broken = BrokenLine.Fit(t, y)!;
        Assert.Equal(5.0109, broken.Break, 0.001);
        Assert.Equal(2.01430, broken.SlopeBefore, 0.0005);
        Assert.Equal(4.99430, broken.SlopeAfter, 0.0005);
        Assert.Equal(0.104190, broken.ResidualSquares, 0.00001);
        Assert.Equal(-46.9573, broken.Criterion, 0.001);

        var straight = LeastSquaresLine.Fit(t, y);
        Assert.Equal(3.687762, straight.Slope, 0.000001);
        Assert.Equal(79.36775, straight.ResidualSquares, 0.00001);
        Assert.Equal(28.6702, BrokenLine.Akaike(straight.ResidualSquares, 12, 3), 0.0001);
    }

    [Fact]
    public void SevenPointsHaveNoBreak() => Assert.Null(BrokenLine.Fit([1, 2, 3, 4, 5, 6, 7], [1, 2, 3, 4, 8, 12, 16]));
}
