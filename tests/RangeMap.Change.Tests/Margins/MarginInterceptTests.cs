namespace RangeMap.Change.Tests.Margins;

public class MarginInterceptTests
{
    // Computed with R 4.2.2 (lm).
    [Fact]
    public void SixTaxaHaveTheirShiftAtUnchangedSize()
    {
        var fit = MarginIntercept.Fit([(120, 150, 28), (300, 290, 12), (80, 110, 35), (450, 500, 24), (200, 180, 4), (150, 210, 41)])!;
        Assert.Equal(6, fit.Taxa);
        Assert.Equal(13.48571, fit.Km, 1e-4);
        Assert.Equal(1.362675, fit.Error, 1e-5);
        Assert.Equal(172.0752, fit.Slope, 1e-3);
        // t of four degrees of freedom is 2.776445.
        Assert.Equal(13.48571 - 2.776445 * 1.362675, fit.Interval.Low, 1e-3);
    }

    [Fact]
    public void TooFewTaxaOrTheSameGrowthInAllHaveNoLine()
    {
        Assert.Null(MarginIntercept.Fit([]));
        Assert.Null(MarginIntercept.Fit([(10, 20, 1), (10, 30, 2), (10, 40, 3), (10, 50, 4), (10, 0, 5), (10, 60, double.NaN)]));
        Assert.Null(MarginIntercept.Fit(Enumerable.Range(1, 9).Select(i => (10 * i, 20 * i, (double)i))));
    }
}
