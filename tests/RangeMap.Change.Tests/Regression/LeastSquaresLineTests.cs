namespace RangeMap.Change.Tests;

public class LeastSquaresLineTests
{
    [Fact]
    public void ResidualsThatResembleTheirNeighboursWidenTheInterval()
    {
        // A slow wave round the line: each residual is close to the one before.
        double[] t = [.. Enumerable.Range(0, 40)];
        double[] y = [.. t.Select(x => 2 * x + 5 * Math.Sin(x / 4))];
        var line = LeastSquaresLine.Fit(t, y);
        Assert.True(line.LagOneCorrelation > 0.8);
        var (plain, serial) = (line.SlopeInterval(0.95), line.SerialSlopeInterval(0.95));
        Assert.True(serial.High - serial.Low > 2 * (plain.High - plain.Low));
    }

    [Fact]
    public void AFlatSeriesHasSlopeNought()
    {
        var line = LeastSquaresLine.Fit([1, 2, 3], [5, 5, 5]);
        Assert.Equal((0, 0, 5, 1), (line.Slope, line.SlopeError, line.Intercept, line.RSquared));
    }

    [Theory]
    [InlineData(new double[] { 1, 2 }, new double[] { 1, 2 })]
    [InlineData(new double[] { 2, 2, 2 }, new double[] { 1, 2, 3 })]
    [InlineData(new double[] { 1, 2, 3 }, new double[] { 1, 2 })]
    public void WhatIsNoLineIsRefused(double[] t, double[] y) =>
        Assert.Throws<ArgumentException>(() => LeastSquaresLine.Fit(t, y));
}
