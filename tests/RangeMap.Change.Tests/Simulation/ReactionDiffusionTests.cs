namespace RangeMap.Change.Tests.Simulation;

public class ReactionDiffusionTests
{
    private static readonly ReactionDiffusion Logistic = new(Growth: 0.5, Diffusion: 10);
    private static readonly Lazy<IReadOnlyList<double>> Fronts = new(() => Logistic.FrontByYear(80));

    // r and D as in a public teaching script that re-creates Lubina and Levin 1988, American Naturalist 131:526-543; the speed computed with R 4.2.2.
    [Fact]
    public void GrowthAndMovementOfSeaOttersGiveTheSpeedOfTheirFront() =>
        Assert.Equal(1.738965, new ReactionDiffusion(0.056, 13.5).LimitSpeed, 1e-6);

    // Computed with R 4.2.2 by the same explicit differences: cells of 0.5 km, steps of 0.005 years, ten full cells at a reflecting end.
    [Theory]
    [InlineData(40, 153.4023)]
    [InlineData(60, 239.8464)]
    [InlineData(80, 327.1880)]
    public void TheFrontOfLogisticGrowthStandsWhereAnotherProgramPutsIt(int year, double km) =>
        Assert.Equal(km, Fronts.Value[year], 1e-4);

    // Fisher 1937: the limit is 2 sqrt(r D) = 4.472136. A simulator is sound if its late speed lies 1.5 to 3 % below that.
    [Fact]
    public void TheSimulatedFrontApproachesItsLimitFromBelow()
    {
        var late = (Fronts.Value[80] - Fronts.Value[70]) / 10;
        Assert.Equal(4.472136, Logistic.LimitSpeed, 1e-6);
        Assert.InRange(late, 0.97 * Logistic.LimitSpeed, 0.985 * Logistic.LimitSpeed);
        // Computed with R 4.2.2: 4.3746 over the years 70 to 80; the expansion for late times gives 4.3826 in their middle.
        Assert.Equal(4.3746, late, 1e-4);
        Assert.Equal(4.3826, Logistic.SpeedAfter(75), 1e-4);
    }

    // The formula of Skellam 1951 evaluated with R 4.2.2 for 10 individuals, seen from a hundredth of an individual a km² on.
    [Theory]
    [InlineData(1, 10.14721)]
    [InlineData(5, 24.35039)]
    [InlineData(10, 43.68781)]
    [InlineData(20, 85.22166)]
    [InlineData(40, 171.51218)]
    [InlineData(80, 347.29639)]
    public void APopulationThatGrowsFromOnePointIsSeenWithinARadius(double years, double km) =>
        Assert.Equal(km, Logistic.RadiusAfter(individuals: 10, density: 0.01, years)!.Value, 1e-5);

    [Fact]
    public void APopulationTooSparseToBeSeenHasNoRadius() =>
        Assert.Null(Logistic.RadiusAfter(individuals: 1, density: 100, years: 1));

    [Fact]
    public void FinerCellsHardlyMoveTheFront() =>
        Assert.Equal(Logistic.FrontByYear(30)[30], Logistic.FrontByYear(30, cellKm: 0.25, stepsPerYear: 800)[30], 0.5);

    // Distances of the front itself, year by year, and of the 1 km squares that it passed in each year: from both, the speed is that of the
    // front between the years 60 and 80, (327.1880 - 239.8464) / 20 = 4.3671 (positions computed with R 4.2.2, above).
    [Fact]
    public void RegressionOfDistanceOnYearGivesTheLateSpeedOfTheSimulatedFront()
    {
        const double late = (327.1880 - 239.8464) / 20;
        var front = Enumerable.Range(60, 21).Select(year => new ArrivalDistance(Fronts.Value[year], year));
        Assert.Equal(late, Spread.MeasureDistances(front).By(SpreadMethods.AllPoints).KmPerYear!.Value, 0.002);

        var squares = Spread.MeasureDistances(SquaresPassed(60, 80));
        Assert.Equal(late, squares.By(SpreadMethods.FrontQuantile).KmPerYear!.Value, 0.02);
        Assert.Equal(late, squares.By(SpreadMethods.AllPoints).KmPerYear!.Value, 0.02);
    }

    [Fact]
    public void StepsTooLongForTheCellsAreRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Logistic.FrontByYear(10, stepsPerYear: 50));

    private static IEnumerable<ArrivalDistance> SquaresPassed(int after, int last) =>
        from year in Enumerable.Range(after + 1, last - after)
        from km in Enumerable.Range((int)Fronts.Value[year - 1], 8).Select(km => km + 0.5)
        where km > Fronts.Value[year - 1] && km <= Fronts.Value[year]
        select new ArrivalDistance(km, year);
}
