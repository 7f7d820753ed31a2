using System.Globalization;

namespace RangeMap.Change.Tests.Forecasts;

/// <summary>How well forecasts do in countries whose future is known. The explicit test prints the table of docs/methods/forecast.md.</summary>
public class ForecastTable(ITestOutputHelper output)
{
    private const int Horizon = 3;
    private static readonly int[] _cuts = [18, 24, 30, 36];

    [Fact]
    public void ForecastsBeatBothReferencesAndTheirChancesAreNeitherTooBoldNorTooTimid()
    {
        var past = PastForecasts(new() { CountryKm = 220 }, seeds: 6);
        Assert.True(Mean(past, cut => cut.Model!.SkillAgainst(cut.NoSpread!)) > 0.03);
        Assert.True(Mean(past, cut => cut.Model!.SkillAgainst(cut.Beside!)) > 0.03);
        Assert.InRange(Mean(past, cut => cut.Model!.Slope), 0.8, 1.2);
    }

    [Fact]
    public void SquaresNamedAsNextAreReachedFarMoreOftenThanSquaresBesideAFind()
    {
        // In this small country squares beside a find mostly lie along the front themselves; where recording is thin behind it, as in the demo, the difference is greater.
        var (_, searched, next, beside) = NextYears(new() { CountryKm = 220 }, seeds: 10);
        Assert.True(next >= 1.7 * beside, $"{next:P1} against {beside:P1}");
        Assert.True(searched >= 0.9, $"{searched:P0} of the squares to search have it");
    }

    [Fact(Explicit = true)]
    public void PrintScoresOverTwoHundredCountries()
    {
        output.WriteLine("| detection | skill against no spread | beside | distance | calibration slope | AUC | forecasts better than both | interval of new squares holds | squares to search that had it | next squares reached that year, of those beside a find |");
        foreach (var detection in (double[])[0.3, 0.5, 0.9])
        {
            var world = new SimulatedArrivals { Detection = detection };
            var past = PastForecasts(world, seeds: 200);
            var (held, searched, next, beside) = NextYears(world, seeds: 200);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {detection} | {Mean(past, cut => cut.Model!.SkillAgainst(cut.NoSpread!)):0.00} | {Mean(past, cut => cut.Model!.SkillAgainst(cut.Beside!)):0.00} | {Mean(past, cut => cut.Model!.SkillAgainst(cut.Distance!)):0.00} | {Mean(past, cut => cut.Model!.Slope):0.00} | {Mean(past, cut => cut.Model!.Auc):0.00} | {Mean(past, Better):P0} of {past.Count} | {held:P0} | {searched:P0} | {next:P1} against {beside:P1} |"));
            foreach (var cut in past.GroupBy(cut => cut.Cut))
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  cut {cut.Key}: skill {Mean([.. cut], one => one.Model!.SkillAgainst(one.NoSpread!)):0.00}, slope {Mean([.. cut], one => one.Model!.Slope):0.00}"));
        }
    }

    private static List<HindcastCut> PastForecasts(SimulatedArrivals world, int seeds) =>
        [.. Enumerable.Range(1, seeds).SelectMany(seed => Hindcast.Of(world.Make((ulong)seed).Sites, _cuts, Horizon, world.SideKm, world.Origin)).Where(cut => cut.Model is not null)];

    private static double? Better(HindcastCut cut) => cut.Model!.SkillAgainst(cut.NoSpread!) > 0 && cut.Model.SkillAgainst(cut.Beside!) > 0 ? 1 : 0;

    private static double Mean(List<HindcastCut> past, Func<HindcastCut, double?> score) => past.Select(score).Where(value => value is not null).Average()!.Value;

    /// <summary>
    /// The year after the last visits: how often the interval of new squares holds the truth, the share of squares to search that have the species, and the shares that it reaches in that very year of
    /// the squares named as next and of those beside a find.
    /// </summary>
    private static (double Held, double Searched, double Next, double Beside) NextYears(SimulatedArrivals world, int seeds)
    {
        const int last = 32, most = 20;
        var (held, searched, next, beside) = (0, new List<bool>(), new List<bool>(), new List<bool>());
        for (var seed = 1; seed <= seeds; seed++)
        {
            var (sites, truth) = world.Make((ulong)seed);
            var fit = ArrivalModel.Fit([.. sites.Select(site => site.Until(last))], world.Origin).Fit!;
            var forecast = Forecast.Of(fit, last + 1);
            var came = forecast.Squares.Count(square => truth[square.Square] <= last + 1);
            held += came >= forecast.Low && came <= forecast.High ? 1 : 0;
            bool Reached(int square) => truth[square] > last && truth[square] <= last + 1;
            searched.AddRange(SearchList.Of(fit, forecast, most).Select(square => truth[square.Square] <= last + 1));
            next.AddRange(SearchList.Ahead(forecast, most).Select(square => Reached(square.Square)));
            var finds = fit.Sites.Where(site => site.FirstFound is not null).ToList();
            beside.AddRange(forecast.Squares.Where(square => finds.Exists(find => Touch(find, fit.Sites[square.Square], world.SideKm))).Select(square => Reached(square.Square)));
        }

        return ((double)held / seeds, Share(searched), Share(next), Share(beside));
    }

    private static double Share(List<bool> of) => of.Average(one => one ? 1 : 0);

    private static bool Touch(ArrivalSite a, ArrivalSite b, double side) => Math.Max(Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y)) < 1.5 * side;
}
