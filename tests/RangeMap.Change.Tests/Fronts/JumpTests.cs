namespace RangeMap.Change.Tests;

public class JumpTests
{
    private static readonly SpreadOptions FromCorner = new() { Origin = SimulatedFront.Origin, OpenAngle = Math.PI / 2 };
    private static readonly IReadOnlyList<ArrivalPoint> Front = new SimulatedFront().FirstRecords(3);

    [Fact]
    public void ASquareFarAheadIsListedAndLeavesTheFrontAlone()
    {
        var plain = Spread.Measure(Front, FromCorner);
        var jumped = Spread.Measure([.. Front, new(355, 205, 12), new(5, 395, 20)], FromCorner);
        Assert.Equal([(355.0, 205.0, 12.0), (5.0, 395.0, 20.0)], jumped.Jumps.TakeLast(2).Select(jump => (jump.X, jump.Y, jump.Time)));
        Assert.InRange(jumped.Jumps[^2].KmAhead, 325, 350);
        Assert.True(jumped.Jumps[^2].KmFromNearest > 200);
        Assert.Equal(plain.By(SpreadMethods.FrontQuantile).KmPerYear!.Value, jumped.By(SpreadMethods.FrontQuantile).KmPerYear!.Value, 0.05);
        Assert.Contains("2 squares far ahead left out", jumped.By(SpreadMethods.FrontQuantile).Note, StringComparison.Ordinal);
        Assert.Contains("far ahead of the front", jumped.Summary, StringComparison.Ordinal);
        Assert.Equal(plain.Squares + 2, jumped.Squares);
    }

    [Fact]
    public void ASecondIntroductionIsOneJumpWithAllThatSpreadFromIt()
    {
        var second = Enumerable.Range(0, 9).Select(i => new ArrivalPoint(355 + i % 3 * 10, 205 + i / 3 * 10, 12 + i));
        var report = Spread.Measure([.. Front, .. second], FromCorner);
        var jump = Assert.Single(report.Jumps);
        Assert.Equal((355.0, 205.0, 9), (jump.X, jump.Y, jump.Squares));
        Assert.Contains("8 more spread from there", report.Summary, StringComparison.Ordinal);
        Assert.Equal(5, report.By(SpreadMethods.FrontQuantile).KmPerYear!.Value, 0.3);
    }

    [Fact]
    public void AnEvenFrontHasNoJump() => Assert.Empty(Spread.Measure(Front, FromCorner).Jumps);

    [Fact]
    public void DistancesAloneHaveNoJumps() => Assert.Empty(Spread.MeasureDistances(PublishedFronts.TwentyThree).Jumps);

    [Fact]
    public void TheOriginHardlyMattersWhereTheFirstSquaresLieTogether()
    {
        var report = Spread.Measure(Front);
        Assert.True(report.OriginRange!.Squares >= 3);
        Assert.InRange(report.By(SpreadMethods.FrontQuantile).KmPerYear!.Value, report.OriginRange.Low - 0.1, report.OriginRange.High + 0.1);
        Assert.DoesNotContain("earliest squares the front speed would be", report.Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void TheOriginMattersWhereTheFirstSquaresLieApart()
    {
        // Along a line from 0 eastwards, with one of the first finds 200 km up the line.
        var points = Enumerable.Range(0, 60).Select(i => new ArrivalPoint(i * 5, i % 3 * 10, 2000 + i / 3)).Append(new(250, 0, 2000));
        var report = Spread.Measure(points, new() { OriginSquares = 4 });
        Assert.True(report.OriginRange!.High - report.OriginRange.Low > 2);
        Assert.Contains("earliest squares the front speed would be", report.Summary, StringComparison.Ordinal);
    }
}
