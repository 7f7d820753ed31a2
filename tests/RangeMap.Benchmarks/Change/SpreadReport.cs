using RangeMap.Change;

namespace RangeMap.Benchmarks;

/// <summary>The spread report with all its intervals for 3,000 squares over 50 years.</summary>
internal static class SpreadReport
{
    private const int Squares = 3_000;
    private const int Years = 50;

    public static async Task RunAsync()
    {
        var points = Points();
        var timing = await Timing.OfAsync("spread report", () => Task.FromResult(Spread.Measure(points)));
        timing.Print();
    }

    /// <summary>A disc that grows 5 km a year, its squares found up to some years late; all by a seed.</summary>
    private static List<ArrivalPoint> Points()
    {
        var chance = new Random(1);
        var points = new List<ArrivalPoint>(Squares);
        while (points.Count < Squares)
        {
            var (year, bearing) = (chance.Next(Years), chance.NextDouble() * 2 * Math.PI);
            var distance = 5.0 * year * Math.Sqrt(chance.NextDouble()) + 10 * chance.NextDouble();
            points.Add(new(distance * Math.Cos(bearing), distance * Math.Sin(bearing), 1970 + year));
        }

        return points;
    }
}
