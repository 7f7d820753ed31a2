using System.Globalization;

namespace RangeMap.Change.Tests.Surface;

/// <summary>Every estimator of speed on the countries by which the arrival model is judged: coast, gaps, recording that grows and gathers round towns. The explicit test prints the last table of docs/methods/spread.md.</summary>
public class EstimatorTable(ITestOutputHelper output)
{
    [Fact]
    public void TheArrivalModelIsNearerTheTruthThanDistanceRegressionWhereDetectionIsLow()
    {
        var errors = Measure(new() { Detection = 0.3, CountryKm = 220 }, seeds: 6).ToDictionary(row => row.Method, row => row.RootMeanSquare);
        Assert.True(errors[SpreadMethods.ArrivalModel] < errors[SpreadMethods.FrontQuantile], FormattableString.Invariant($"{errors[SpreadMethods.ArrivalModel]:0.00} against {errors[SpreadMethods.FrontQuantile]:0.00}"));
    }

    [Fact(Explicit = true)]
    public void PrintEveryEstimatorOverTwoHundredCountries()
    {
        foreach (var detection in (double[])[0.3, 0.5, 0.9])
        {
            foreach (var row in Measure(new() { Detection = detection }, seeds: 200))
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {detection} | {row.Method} | {row.Mean:0.00} ({row.RootMeanSquare:0.00}); {row.Covered:P0} of {row.Given} |"));
        }
    }

    private static List<(string Method, double Mean, double RootMeanSquare, double Covered, int Given)> Measure(SimulatedArrivals world, int seeds)
    {
        var truth = world.SpeedKmPerYear;
        var reports = new SpreadReport[seeds];
        Parallel.For(0, seeds, seed => reports[seed] = Report(world, (ulong)seed + 1));
        return [.. reports.SelectMany(report => report.Estimators).GroupBy(estimate => estimate.Method).Select(method =>
        {
            var given = method.Where(estimate => estimate.KmPerYear is not null).ToList();
            return (method.Key, given.Average(e => e.KmPerYear!.Value), Math.Sqrt(given.Average(e => Math.Pow(e.KmPerYear!.Value - truth, 2))), given.Average(e => e.Low <= truth && truth <= e.High ? 1.0 : 0), given.Count);
        })];
    }

    private static SpreadReport Report(SimulatedArrivals world, ulong seed)
    {
        var sites = world.Make(seed).Sites;
        var points = sites.Where(site => site.FirstFound is not null).Select(site => new ArrivalPoint(site.X, site.Y, site.FirstFound!.Value));
        var visits = sites.SelectMany(site => site.Visits.Select(visit => new SquareVisit(site.X, site.Y, visit.Year, visit.Found))).ToList();
        // All have the true origin; the coast runs along the south, so that half of all directions are open.
        var options = new SpreadOptions { Origin = new(world.Origin.X, world.Origin.Y), OpenAngle = Math.PI, RecordedUntil = world.Years - 1 };
        return Spread.Measure(points, options, visits, ArrivalModel.Fit(sites, world.Origin));
    }
}
