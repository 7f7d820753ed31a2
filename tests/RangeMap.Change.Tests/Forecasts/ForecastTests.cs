namespace RangeMap.Change.Tests.Forecasts;

public class ForecastTests
{
    [Fact]
    public void TenChancesHaveTheScoresComputedWithR()
    {
        // Computed with R 4.2.2 (glm for the calibration).
        double[] chances = [0.9, 0.8, 0.8, 0.6, 0.6, 0.4, 0.3, 0.2, 0.2, 0.1];
        int[] happened = [1, 1, 0, 1, 0, 1, 0, 0, 0, 0];
        var scores = ForecastScores.Of([.. chances.Zip(happened, (p, y) => (p, y == 1))])!;
        Assert.Equal(0.175, scores.Brier, 1e-9);
        Assert.Equal(0.518967, scores.Log, 1e-6);
        Assert.Equal(0.833333, scores.Auc!.Value, 1e-6);
        Assert.Equal(1.082643, scores.Slope!.Value, 1e-5);
        Assert.Equal(-0.541288, scores.Intercept!.Value, 1e-5);
        var baseRate = ForecastScores.Of([.. happened.Select(y => (0.4, y == 1))])!;
        Assert.Equal(0.270833, scores.SkillAgainst(baseRate)!.Value, 1e-6);
    }

    // Computed with R 4.2.2 (glm): chances of one in a million that came true all the same.
    [Fact]
    public void ChancesThatWereFarTooBoldHaveTheCalibrationComputedWithR()
    {
        (double Chance, int Happened)[] groups = [(1e-6, 3), (0.01, 2), (0.3, 4), (0.6, 5), (0.9, 3)];
        var scores = ForecastScores.Of([.. groups.SelectMany(group => Enumerable.Range(0, 10).Select(i => (group.Chance, i < group.Happened)))])!;
        Assert.Equal(0.03194759521, scores.Slope!.Value, 1e-8);
        Assert.Equal(-0.56248920643, scores.Intercept!.Value, 1e-8);
    }

    [Fact]
    public void CalibrationIsFoundWhereMostChancesLieNearNought()
    {
        // A thousand squares far ahead of the front, some near it: events come with the chances given, so the slope is 1 but for chance.
        var chance = new Pcg(5, 1);
        var given = Enumerable.Range(0, 4000).Select(i => i < 3000 ? 1e-6 * (i + 1) / 3000 : 0.01 + 0.9 * chance.NextUnit()).ToList();
        List<(double, bool)> chances = [];
        foreach (var p in given)
            chances.Add((p, chance.NextChance(p)));
        Assert.InRange(ForecastScores.Of(chances)!.Slope!.Value, 0.85, 1.15);
    }

    [Fact]
    public void ScoresThatCannotBeComputedAreLeftOut()
    {
        Assert.Null(ForecastScores.Of([]));
        var none = ForecastScores.Of([(0.2, false), (0.4, false)])!;
        Assert.Equal((null, null), (none.Auc, none.Slope));
        Assert.Null(ForecastScores.Of([(0.1, false), (0.9, true)])!.Slope);
        Assert.True(double.IsFinite(ForecastScores.Of([(0, true), (1, false)])!.Log));
    }

    [Fact]
    public void TheForecastOfAnInventedFrontHoldsWhatComes()
    {
        var (held, better, searched, random) = (0, 0, 0, 0.0);
        for (var seed = 1UL; seed <= 4; seed++)
        {
            var world = new SimulatedArrivals { CountryKm = 220, Years = 36 };
            var (sites, truth) = world.Make(seed);
            var fit = ArrivalModel.Fit([.. sites.Select(site => site.Until(32))], world.Origin).Fit!;
            var forecast = Forecast.Of(fit, 34);
            held += forecast.Squares.Count(s => truth[s.Square] <= 34) is var came && came >= forecast.Low && came <= forecast.High ? 1 : 0;
            var best = SearchList.Of(fit, forecast, 20);
            searched += best.Count(s => truth[s.Square] <= 34);
            random += 20.0 * forecast.Squares.Count(s => truth[s.Square] <= 34) / forecast.Squares.Count;
            better += Hindcast.Of(sites, [24, 30], 3, world.SideKm, world.Origin).Count(cut => cut.Model!.SkillAgainst(cut.NoSpread!) > 0 && cut.Model.SkillAgainst(cut.Beside!) > 0);
        }

        Assert.True(held >= 3, $"{held} of 4 intervals hold the number that came");
        Assert.True(searched >= 3 * random, $"{searched} of 80 squares to search had the species, of as many at random {random}");
        Assert.True(better >= 6, $"the model beats both references in {better} of 8 hindcasts");
    }

    [Fact]
    public void AYearBeforeTheLastVisitOrFarAheadIsRefused()
    {
        var world = new SimulatedArrivals { CountryKm = 160, Years = 28 };
        var fit = ArrivalModel.Fit(world.Make(1).Sites, world.Origin).Fit!;
        Assert.Throws<ArgumentOutOfRangeException>(() => Forecast.Of(fit, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => Forecast.Of(fit, 27 + Forecast.MostYearsAhead + 1));
    }

    [Fact]
    public void AHindcastWithoutEnoughDataSaysSo()
    {
        var (sites, _) = new SimulatedArrivals { CountryKm = 160, Years = 28 }.Make(1);
        var cut = Assert.Single(Hindcast.Of(sites, [2], 3, 10));
        Assert.Null(cut.Model);
        Assert.Contains("of at least", cut.Refused, StringComparison.Ordinal);
    }
}
