using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace RangeMap.Change.Tests;

/// <summary>The estimators against fronts of known speed. The table of docs/methods/spread.md is printed by the explicit test.</summary>
public class Validation(ITestOutputHelper output)
{
    private const int Runs = 100;

    [Fact]
    public void TheFrontSpeedsIntervalHoldsTheTruthInNinetyOfAHundredFullyRecordedFronts()
    {
        var front = new SimulatedFront();
        var holding = Enumerable.Range(1, Runs).Count(seed =>
        {
            var estimate = Measure(front, (ulong)seed).By(SpreadMethods.FrontQuantile);
            return estimate.Low <= front.SpeedKmPerYear && front.SpeedKmPerYear <= estimate.High;
        });
        Assert.True(holding >= 90, $"only {holding} of {Runs} intervals hold the true speed");
    }

    [Theory(Explicit = true)]
    [InlineData(5)]
    [InlineData(1.5)]
    [InlineData(20)]
    public void PrintTheTable(double speed)
    {
        foreach (var scheme in Enum.GetValues<DetectionScheme>())
        {
            var front = new SimulatedFront { Scheme = scheme, SpeedKmPerYear = speed };
            var reports = Enumerable.Range(1, Runs).Select(seed => Measure(front, (ulong)seed)).ToList();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{scheme}, true {speed}, squares {reports.Average(r => r.Squares):0}, jumps {reports.Average(r => r.Jumps.Count):0.0}, phases {reports.Count(r => r.Phases.Count > 0)}"));
            foreach (var method in reports[0].Estimators.Select(e => e.Method))
                output.WriteLine(Row(method, [.. reports.Select(r => r.By(method))], speed));
        }
    }

    [Fact(Explicit = true)]
    public void PrintTheTimeOfAReport()
    {
        var front = new SimulatedFront { SpeedKmPerYear = 12.4, Years = 50 };
        Measure(front, 1);
        var watch = Stopwatch.StartNew();
        var report = Measure(front, 2);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{report.Squares} squares, 50 years: {watch.Elapsed.TotalSeconds:0.00} s"));
    }

    private static string Row(string method, List<SpreadEstimate> estimates, double speed)
    {
        var given = estimates.Where(e => e.Refused is null).ToList();
        var row = new StringBuilder();
        row.Append(CultureInfo.InvariantCulture, $"| {method} | refused {estimates.Count - given.Count} ");
        if (given.Count > 0)
        {
            var mean = given.Average(e => e.KmPerYear!.Value);
            var error = Math.Sqrt(given.Average(e => (e.KmPerYear!.Value - speed) * (e.KmPerYear.Value - speed)));
            var holding = given.Count(e => e.Low <= speed && speed <= e.High);
            var width = given.Average(e => e.High!.Value - e.Low!.Value);
            row.Append(CultureInfo.InvariantCulture, $"| {mean:0.00} ({error:0.00}) | {holding} of {given.Count} | {width:0.00} |");
        }

        return row.ToString();
    }

    private static SpreadReport Measure(SimulatedFront front, ulong seed)
    {
        var visits = front.Visits(seed);
        var first = CensoredYears.Of(visits).Where(square => double.IsFinite(square.Arrival.By)).Select(square => new ArrivalPoint(square.X, square.Y, square.Arrival.By));
        return Spread.Measure(first, new() { Origin = SimulatedFront.Origin, OpenAngle = Math.PI / 2, Seed = seed }, visits);
    }
}
