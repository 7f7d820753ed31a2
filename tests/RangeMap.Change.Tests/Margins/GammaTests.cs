using CsCheck;
using MathNet.Numerics;

namespace RangeMap.Change.Tests.Margins;

public class GammaTests
{
    private static readonly double[] _sixteen = [12, 25, 31, 40, 44, 52, 58, 63, 71, 80, 88, 95, 104, 118, 130, 151];

    // Maximum likelihood, the quantiles and the mean of ten computed with R 4.2.2.
    [Fact]
    public void SixteenDistancesHaveTheirGammaMargin()
    {
        var fit = GammaFit.To(_sixteen);
        Assert.Equal(2.989658, fit.Shape, 1e-5);
        Assert.Equal(24.29208, fit.Scale, 1e-4);
        Assert.Equal(152.5619, fit.Quantile(0.95), 1e-3);
        Assert.Equal(135.25, SortedQuantile.Of(_sixteen, 0.95), 1e-9);
    }

    // The mean of the ten farthest, computed with R 4.2.2; the same sixteen places as middles of squares in a row to the east.
    [Fact]
    public void TheMeanOfTenIsThatOfTheFarthestTen()
    {
        Find[] finds = [.. _sixteen.Select((_, i) => new Find(i, 1))];
        var range = TaxonRange.Of(0, finds, []);
        var margin = new MarginFrame(MarginAxis.Four[2], _sixteen, new double[16], 10, new(), new BlockDraws(100, 1));
        var squares = OutwardSquares.Of(range, range.Before, margin.OutermostFirst(range.Squares), margin, HeldBlocks.Of(margin.Strips, range.Squares));
        Assert.Equal(95.8, squares.Mean(), 1e-9);
        Assert.Equal(95.8, squares.Mean([1]), 1e-9);
        Assert.Equal(15, squares.Outermost[0]);
        Assert.True(double.IsNaN(OutwardSquares.Of(range, range.After, margin.OutermostFirst(range.Squares), margin, HeldBlocks.Of(margin.Strips, range.Squares)).Mean()));
    }

    [Fact]
    public void TheTableOfQuantilesAgreesWithTheExactFit() => Gen.Double[0.5, 900].Array[2, 60].Sample(distances =>
    {
        var (mean, logs) = (distances.Average(), distances.Average(Math.Log));
        var exact = GammaFit.To(distances).Quantile(0.95);
        Assert.Equal(1, _table.Of(mean, Math.Log(mean) - logs) / exact, 1e-4);
    });

    [Fact]
    public void TheShapeSolvesItsEquationOverTheWholeRange()
    {
        for (var exponent = -6.0; exponent <= 1.3; exponent += 0.1)
        {
            var s = Math.Pow(10, exponent);
            var shape = GammaFit.ShapeOf(s);
            Assert.Equal(1, (Math.Log(shape) - SpecialFunctions.DiGamma(shape)) / s, 1e-6);
        }
    }

    [Fact]
    public void EqualDistancesHaveTheirMarginThere()
    {
        Assert.Equal(70, _table.Of(70, 0));
        Assert.Equal(70, GammaFit.To([70, 70, 70]).Quantile(0.95), 0.1);
    }

    [Fact]
    public void MultiplyingDistancesMultipliesTheMargin() =>
        Assert.Equal(10 * GammaFit.To(_sixteen).Quantile(0.95), GammaFit.To([.. _sixteen.Select(d => 10 * d)]).Quantile(0.95), 1e-6);

    private static readonly GammaQuantiles _table = new(0.95);
}
