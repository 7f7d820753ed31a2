namespace RangeMap.Change.Tests.Trends;

public class OccupancyModelTests
{
    [Fact]
    public void FiveSitesOfThreeVisitsHaveTheLikelihoodOfR()
    {
        // Histories 101, 000, 010, 000, 110; computed with R 4.2.2.
        var likelihood = new OccupancyLikelihood(FiveSites(), 0);
        likelihood.Evaluate([OccupancyParameters.Logit(.7), OccupancyParameters.Logit(.5)]);
        Assert.Equal(-9.2044283, likelihood.LogLikelihood, 1e-6);

        var fit = OccupancyFit.To(FiveSites(), 0)!;
        Assert.Equal(0.701304, fit.Chance(0), 1e-5);
        Assert.Equal(0.475305, fit.Chance(1), 1e-5);
        Assert.Equal(-9.195768, fit.LogLikelihood, 1e-6);
    }

    // Computed with R 4.2.2 at psi .6, gamma .2, eps .1, p .4. Chance of a history: visits and finds by season, in a given order.
    [Theory]
    [InlineData(new[] { 1, 0, 1 }, 0.010768896)]
    [InlineData(new[] { 0, 2 }, 0.043904)]
    [InlineData(new[] { 0, 0, 0 }, 0.33975962)]
    public void HistoriesOfSeveralSeasonsHaveTheChanceOfR(int[] finds, double chance) => Assert.Equal(chance, ChanceOf(finds), 1e-8);

    [Fact]
    public void AllHistoriesOfTwoSeasonsAndTwoVisitsSumToOne()
    {
        var sum = Enumerable.Range(0, 16).Sum(history => ChanceOf([(history & 1) + (history >> 1 & 1), (history >> 2 & 1) + (history >> 3 & 1)]));
        Assert.Equal(1, sum, 1e-12);
    }

    [Fact]
    public void OneSeasonGivesWhatRGives()
    {
        var fit = OccupancyFit.To(OccupancySites.OfHistories([.. Sites().Select(k => (new[] { k[0] + k[1] }, new[] { k[4] + k[5] }))]), 0)!;
        Close("one.psi", fit.Place[0]);
        Close("one.p", fit.Place[1]);
        Close("one.se.psi", Math.Sqrt(fit.Variance(0)));
        Close("one.se.p", Math.Sqrt(fit.Variance(1)));
        Close("one.loglik", fit.LogLikelihood);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void TwoSeasonsWithClassesOfVisitGiveWhatRGives(int prior)
    {
        var fit = OccupancyFit.To(TwoSeasons(), prior)!;
        for (var i = 0; i < 6; i++)
        {
            Close($"two{prior}.t{i}", fit.Place[i]);
            Close($"two{prior}.se{i}", Math.Sqrt(fit.Variance(i)));
        }

        Close($"two{prior}.loglik", fit.LogLikelihood);
    }

    [Fact]
    public void ScoreAndInformationAreTheSlopesOfTheLikelihood()
    {
        OccupancyLikelihood at = new(TwoSeasons(), 1), up = new(TwoSeasons(), 1), down = new(TwoSeasons(), 1);
        double[] place = [0.3, -1, -0.5, 0.2, -0.3, 0.7];
        at.Evaluate(place);
        for (var i = 0; i < place.Length; i++)
        {
            up.Evaluate(Moved(place, i, 1e-5));
            down.Evaluate(Moved(place, i, -1e-5));
            Assert.Equal((up.LogLikelihood - down.LogLikelihood) / 2e-5, at.Score[i], 1e-5);
            for (var j = 0; j < place.Length; j++)
                Assert.Equal(-(up.Score[j] - down.Score[j]) / 2e-5, at.Information[i, j], 1e-5);
        }
    }

    [Fact]
    public void ATaxonThatNeverMovedIsHeldByThePenaltyAndItsShareStands()
    {
        // 60 squares always found, 40 never: without turnover there is no finite logit, with half a square on either side there is.
        var sites = OccupancySites.OfHistories([.. Enumerable.Range(0, 100).Select(i => (new[] { 6, 6 }, i < 60 ? new[] { 4, 4 } : [0, 0]))]);
        Assert.Null(OccupancyFit.To(sites, 0));
        var seasons = OccupancyFit.To(sites, 1)!.Occupancy();
        Assert.Equal(0.6, seasons[0].Psi, 0.005);
        Assert.Equal(seasons[0].Psi, seasons[1].Psi, 0.005);
    }

    private static OccupancySites FiveSites() => OccupancySites.OfHistories([([3], [2]), ([3], [0]), ([3], [1]), ([3], [0]), ([3], [2])]);

    private static int[][] Sites() => [.. ReferenceTables.Numbers("sites.csv").Select(row => Array.ConvertAll(row, cell => (int)cell))];

    private static OccupancySites TwoSeasons()
    {
        var sites = Sites();
        return new(2, [-0.5, 0.5], [], [.. Enumerable.Range(0, sites.Length)], [.. sites.SelectMany(k => k[..4])], [.. sites.SelectMany(k => k[4..])]);
    }

    private static double ChanceOf(int[] finds)
    {
        var likelihood = new OccupancyLikelihood(OccupancySites.OfHistories([(Array.ConvertAll(finds, _ => 2), finds)]), 0);
        var turnover = Enumerable.Repeat(new[] { .2, .1 }, finds.Length - 1).SelectMany(step => step);
        likelihood.Evaluate([.. new[] { .6 }.Concat(turnover).Concat(finds.Select(_ => .4)).Select(OccupancyParameters.Logit)]);
        return Math.Exp(likelihood.LogLikelihood);
    }

    private static double[] Moved(double[] place, int parameter, double by)
    {
        var moved = (double[])place.Clone();
        moved[parameter] += by;
        return moved;
    }

    // The reference climbs and differentiates numerically.
    private static void Close(string name, double actual) => Assert.Equal(ReferenceTables.Expected(name), actual, 2e-4);
}
