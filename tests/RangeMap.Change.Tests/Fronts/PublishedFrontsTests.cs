namespace RangeMap.Change.Tests;

public class PublishedFrontsTests
{
    private static readonly double[] Years = [.. PublishedFronts.TwentyThree.Select(d => d.Time)];
    private static readonly double[] Distances = [.. PublishedFronts.TwentyThree.Select(d => d.DistanceKm)];

    // Numbers computed with R 4.2.2 from the areas. The literature says "about 11 km a year" (from memory, not verified).
    [Fact]
    public void TheMuskratSpreadAtElevenKilometresAYear()
    {
        double[] years = [.. PublishedFronts.Muskrat.Select(m => m.Year)];
        double[] radii = [.. PublishedFronts.Muskrat.Select(m => FrontByArea.Radius(m.SquareKm))];
        double[] expected = [0, 41.4593, 66.7558, 109.5458, 158.8772, 253.3205];
        for (var i = 0; i < radii.Length; i++)
            Assert.Equal(expected[i], radii[i], 0.0001);

        var line = LeastSquaresLine.Fit(years, radii);
        Assert.Equal(11.37225, line.Slope, 0.00001);
        Assert.Equal(0.315415, line.SlopeError, 0.000001);
        Assert.Equal(0.996932, line.RSquared, 0.000001);
        var interval = line.SlopeInterval(0.95);
        Assert.Equal(10.4965, interval.Low, 0.0001);
        Assert.Equal(12.2480, interval.High, 0.0001);
        // The residuals alternate, so allowing for likeness in time changes nothing.
        Assert.Equal(interval, line.SerialSlopeInterval(0.95));

        Assert.Equal(11.53651, LeastSquaresLine.Fit(years.AsSpan(1), radii.AsSpan(1)).Slope, 0.00001);
    }

    // Arithmetic of the disc: 250 and 600 cells of 2 km by 2 km ten years apart (computed with R 4.2.2).
    [Fact]
    public void CountsOfCellsGiveTheRadiusOfADisc()
    {
        Assert.Equal(17.84124, FrontByArea.Radius(250 * 4), 0.00001);
        Assert.Equal(27.63953, FrontByArea.Radius(600 * 4), 0.00001);
        Assert.Equal(0.979829, (FrontByArea.Radius(2400) - FrontByArea.Radius(1000)) / 10, 0.000001);
        Assert.Equal(1.128379, FrontByArea.Radius(4), 0.000001);
        Assert.Equal(5.641896, FrontByArea.Radius(100), 0.000001);
        Assert.Equal(FrontByArea.Radius(200), FrontByArea.Radius(100, Math.PI), 1e-12);
    }

    // Slope and error computed with R 4.2.2. Smith, Giladi and Lee 2009 (Ecology 90:2503-2512, abstract) give about
    // 1.4 km a year for 1938-1972.
    [Fact]
    public void TheSeaOttersNorthernFrontMovedOnePointFourKilometresAYear()
    {
        var estimate = Spread.MeasureDistances(PublishedFronts.SeaOtter).By(SpreadMethods.AllPoints);
        Assert.Equal(1.373251, estimate.KmPerYear!.Value, 0.000001);
        Assert.Equal(1.4, Math.Round(estimate.KmPerYear.Value, 1));
        Assert.Equal(10, estimate.N);

        var line = LeastSquaresLine.Fit(
            [.. PublishedFronts.SeaOtter.Select(d => d.Time)], [.. PublishedFronts.SeaOtter.Select(d => d.DistanceKm)]);
        Assert.Equal(0.121182, line.SlopeError, 0.000001);
    }

    // Computed with R 4.2.2 lm().
    [Fact]
    public void TheLeastSquaresLineThroughTwentyThreeSquares()
    {
        var line = LeastSquaresLine.Fit(Years, Distances);
        Assert.Equal(3.290061, line.Slope, 0.000001);
        Assert.Equal(0.800655, line.SlopeError, 0.000001);
        Assert.Equal(0.445700, line.RSquared, 0.000001);
        Assert.Equal(1.625008, line.SlopeInterval(0.95).Low, 0.000001);
        Assert.Equal(4.955113, line.SlopeInterval(0.95).High, 0.000001);
    }

    // Computed with R 4.2.2 quantreg 5.94 and confirmed by trying all pairs of points; all three are unique.
    [Theory]
    [InlineData(0.50, 4.125, null, null)]
    [InlineData(0.90, 5.000, null, 26.1)]
    [InlineData(0.95, 5.125, -10244.125, 13.2125)]
    public void TheQuantileLineThroughTwentyThreeSquares(double tau, double slope, double? intercept, double? objective)
    {
        var line = QuantileLine.Fit(Years, Distances, tau);
        Assert.Equal(slope, line.Slope, 1e-9);
        Assert.True(line.IsUnique);
        if (intercept is not null)
            Assert.Equal(intercept.Value, line.Intercept, 1e-6);
        if (objective is not null)
            Assert.Equal(objective.Value, line.Objective, 1e-9);
    }

    // Running maxima 11 21 31 41 52, slope 5.1: computed with R 4.2.2.
    [Fact]
    public void TheFarthestOfTwentyThreeSquares()
    {
        var records = FirstRecords.FromDistances(PublishedFronts.TwentyThree);
        var (_, maxima) = FrontByMaximum.BoundaryByTime(records.Squares, records.Times.Distinct());
        Assert.Equal([11, 21, 31, 41, 52], maxima);
        Assert.Equal(5.1, Spread.MeasureDistances(PublishedFronts.TwentyThree).By(SpreadMethods.Maximum).KmPerYear!.Value, 1e-9);
    }

    // Four sectors of 90 degrees; boundaries and slopes computed with R 4.2.2.
    [Fact]
    public void TheBoundaryMovesFastestToTheNorth()
    {
        var report = Spread.Measure(PublishedFronts.RoundTheOrigin, new() { Origin = new(0, 0), SectorCount = 4, MinimumSectorSquares = 2, MinimumTimes = 4 });
        double[] slopes = [6.093136, 5.569151, 0.979884, 2.161088];
        double[] farthest = [51.0882, 46.0977, 14.3178, 20.0250];
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(90 * i, report.Sectors[i].Bearing);
            Assert.Equal(slopes[i], report.Sectors[i].KmPerYear!.Value, 0.000001);
            Assert.Equal(farthest[i], report.Sectors[i].FarthestKm!.Value, 0.0001);
        }

        Assert.Equal(slopes.Average(), report.By(SpreadMethods.Sectors).KmPerYear!.Value, 0.000001);
        Assert.Equal(2004, report.Sectors[2].LastAdvance);
        Assert.Contains("Fastest towards the north", report.Summary, StringComparison.Ordinal);
    }
}
