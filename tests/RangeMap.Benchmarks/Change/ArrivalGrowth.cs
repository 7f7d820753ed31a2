using System.Globalization;
using RangeMap.Change;

namespace RangeMap.Benchmarks;

/// <summary>
/// The arrival model over invented countries of 500 to 20,000 squares and 50 years, each reached by the species in about 45 years: the fit with its speed, the local
/// speeds and the forecast of the next year; then ten past forecasts for 3,000 squares.
/// </summary>
internal static class ArrivalGrowth
{
    private const int Years = 50;
    private const int YearsToCross = 45;
    private const int HindcastSquares = 3_000;
    private const int Cuts = 10;
    private const int Horizon = 3;

    public static async Task RunAsync()
    {
        foreach (var squares in (int[])[500, 1_000, 3_000, 10_000, 20_000])
        {
            var (world, sites) = Country(squares);
            var report = "";
            var timing = await Timing.OfAsync($"arrival model, {sites.Count:N0} squares, {sites.Sum(site => site.Visits.Count):N0} visits", () => Task.FromResult(report = Report(sites, world.Origin)));
            timing.Print();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {report}; truth {world.SpeedKmPerYear:0.00}"));
        }

        await HindcastAsync();
    }

    private static async Task HindcastAsync()
    {
        var (world, sites) = Country(HindcastSquares);
        var cuts = Enumerable.Range(1, Cuts).Select(i => Years - 1 - Horizon * i).Reverse().ToList();
        IReadOnlyList<HindcastCut> made = [];
        var timing = await Timing.OfAsync($"hindcast of {Cuts} cuts, {sites.Count:N0} squares", () => Task.FromResult(made = Hindcast.Of(sites, cuts, Horizon, world.SideKm, world.Origin)));
        timing.Print();
        foreach (var cut in made)
        {
            Console.WriteLine(cut.Model is null
                ? string.Create(CultureInfo.InvariantCulture, $"  {cut.Cut}: {cut.Refused}")
                : string.Create(CultureInfo.InvariantCulture, $"  {cut.Cut}: n {cut.Model.N}, skill against no spread {cut.Model.SkillAgainst(cut.NoSpread!):0.00}, beside {cut.Model.SkillAgainst(cut.Beside!):0.00}, slope {cut.Model.Slope:0.00}, AUC {cut.Model.Auc:0.00}"));
        }
    }

    private static (SimulatedArrivals World, IReadOnlyList<ArrivalSite> Sites) Country(int squares)
    {
        var side = 10 * Math.Sqrt(squares / 0.93);
        var world = new SimulatedArrivals { CountryKm = side, Years = Years, SpeedKmPerYear = side / YearsToCross };
        return (world, world.Make(1).Sites);
    }

    private static string Report(IReadOnlyList<ArrivalSite> sites, PlanePoint origin)
    {
        var fit = ArrivalModel.Fit(sites, origin).Fit!;
        var speed = ArrivalSpeed.Of(fit);
        var local = LocalSpread.Of(fit, Years - 1).Count(spread => spread.KmPerYear is not null);
        var forecast = Forecast.Of(fit, Years);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{speed?.KmPerYear:0.00} km a year ({speed?.Interval.Low:0.00} to {speed?.Interval.High:0.00}), {local} local speeds, {forecast.Expected:0} new squares ({forecast.Low:0} to {forecast.High:0}) next year");
    }
}
