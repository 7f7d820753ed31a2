namespace RangeMap.Change.Tests.Trends;

public class RelativeLineTests
{
    // An invented group of 20 taxa in 200 squares; line, variance and indices computed with R 4.2.2.
    private static readonly int[] _before = [6, 8, 11, 15, 19, 24, 30, 37, 45, 54, 64, 75, 87, 100, 113, 127, 142, 158, 171, 183];
    private static readonly int[] _after = [6, 12, 26, 14, 25, 32, 45, 45, 76, 64, 81, 98, 96, 102, 141, 114, 158, 165, 181, 187];

    [Fact]
    public void LineAndVarianceAreThoseOfR()
    {
        var fit = RelativeLine.Fit(200, _before, _after)!;
        Assert.Equal(0.305893, fit.Line.Intercept, 1e-5);
        Assert.Equal(0.980329, fit.Line.Slope, 1e-5);
        Assert.Equal(0.0490690, fit.Variance.A, 1e-5);
        Assert.Equal(0.5458612, fit.Variance.B, 1e-5);
    }

    [Theory]
    [InlineData(1, -1.1192, -1.1413)]
    [InlineData(3, 1.8956, 1.9180)]
    [InlineData(4, -1.5305, -1.5380)]
    [InlineData(9, 1.6495, 1.6163)]
    [InlineData(15, 1.2378, 1.2247)]
    [InlineData(16, -2.2699, -2.2640)]
    [InlineData(20, 0.0706, 0.0748)]
    public void TheIndexIsThatOfR(int taxon, double index, double adjusted)
    {
        var fit = RelativeLine.Fit(200, _before, _after)!;
        Assert.Equal(index, fit.Index[taxon - 1], 1e-3);
        Assert.Equal(adjusted, fit.Adjusted[taxon - 1], 1e-3);
    }

    [Theory]
    [InlineData(6, -3.39863)]
    [InlineData(26, -1.88478)]
    public void TheLogitAddsHalfASquareToEitherSide(int squares, double logit) => Assert.Equal(logit, RelativeLine.Logit(squares, 200), 1e-5);

    [Fact]
    public void TaxaOnOneLineHaveNoIndex() => Assert.Null(RelativeLine.Fit(200, _before, _before));

    [Fact]
    public void TaxaOfOneRangeSizeHaveNoIndex() => Assert.Null(RelativeLine.Fit(200, [7, 7, 7, 7], [5, 6, 7, 8]));
}
