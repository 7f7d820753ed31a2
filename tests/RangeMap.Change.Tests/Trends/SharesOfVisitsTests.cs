namespace RangeMap.Change.Tests.Trends;

public class SharesOfVisitsTests
{
    [Fact]
    public void TwelveOfFortyHasTheScoreIntervalOfR()
    {
        // Computed with R 4.2.2, prop.test without continuity correction.
        var interval = SharesOfVisits.Wilson(12 / 40.0, 40);
        Assert.Equal(0.180748, interval.Low, 1e-6);
        Assert.Equal(0.454300, interval.High, 1e-6);
    }

    [Fact]
    public void TheDifferenceOfTwoSharesHasThePublishedInterval()
    {
        // 56 of 70 less 48 of 80: 0.0524 to 0.3339, Newcombe 1998, Statistics in Medicine 17:873-890, method 10; from memory, not verified.
        var interval = SharesOfVisits.OfDifference(48 / 80.0, SharesOfVisits.Wilson(48 / 80.0, 80), 56 / 70.0, SharesOfVisits.Wilson(56 / 70.0, 70), 0);
        Assert.Equal(0.0524, interval.Low, 1e-4);
        Assert.Equal(0.3339, interval.High, 1e-4);
    }

    [Theory]
    [InlineData(0.2, 0, 0.4, 0.05)]
    [InlineData(-0.2, -0.4, 0, 0.05)]
    [InlineData(0, -0.1, 0.3, 1)]
    public void AnIntervalThatEndsAtZeroHasAPValueOfFivePercent(double value, double low, double high, double p) =>
        Assert.Equal(p, SharesOfVisits.PValue(value, new(low, high)), 1e-9);

    [Fact]
    public void VisitsThatAreAlikeWithinASquareCountForLess()
    {
        // Two squares always, two never: each square of ten visits tells what one visit would, but for the sampling of four squares.
        var shares = ClusteredShares.Of([10, 10, 10, 10, 0, 0, 0, 0], [10, 10, 10, 10, 10, 10, 10, 10]);
        Assert.Equal(0.5, shares.Before.Share);
        Assert.Equal(10 * 4 / 3.0, shares.Before.DesignEffect, 1e-9);
        Assert.Equal(1, shares.Correlation, 1e-9);
    }

    [Fact]
    public void VisitsMoreEvenThanChanceAreTakenAsIndependent() =>
        Assert.Equal(1, ClusteredShares.Of([5, 5, 5, 5], [10, 10, 10, 10]).Before.DesignEffect);

    [Fact]
    public void AShareOfNoneBorrowsTheDesignEffectOfTheOtherPeriod()
    {
        var shares = ClusteredShares.Of([10, 0, 10, 0, 0, 0, 0, 0], [10, 10, 10, 10, 10, 10, 10, 10]);
        Assert.Equal(shares.Before.DesignEffect, shares.After.DesignEffect);
        Assert.True(shares.After.Interval.High > 0.1);
    }
}
