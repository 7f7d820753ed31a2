using System.Globalization;

namespace RangeMap.Change.Tests;

/// <summary>How often two phases are seen where there is one, and where there are two.</summary>
public class PhaseValidation(ITestOutputHelper output)
{
    private static readonly (string Name, SimulatedFront Front)[] Fronts =
    [
        ("one speed, 5", new()),
        ("5, stands still after 20 years", new() { ChangeYear = 20 }),
        ("3, then 9 after 20 years", new() { SpeedKmPerYear = 3, ChangeYear = 20, LaterSpeedKmPerYear = 9 }),
    ];

    [Fact(Explicit = true)]
    public void PrintTheTable()
    {
        foreach (var (name, front) in Fronts)
        {
            foreach (var scheme in Enum.GetValues<DetectionScheme>())
            {
                var found = Enumerable.Range(1, 100).Select(seed => Phases(front with { Scheme = scheme }, (ulong)seed)).Where(p => p.Count == 2).ToList();
                output.WriteLine($"{name}, {scheme}: {Text(found)}");
            }
        }
    }

    [Fact]
    public void AStandIsFoundInNinetyOfAHundredAndOneSpeedLeftAloneInNinety()
    {
        int stands = 0, changes = 0;
        for (var seed = 1UL; seed <= 100; seed++)
        {
            stands += Phases(Fronts[1].Front, seed).Count / 2;
            changes += Phases(Fronts[0].Front, seed).Count / 2;
        }

        Assert.InRange(stands, 90, 100);
        Assert.InRange(changes, 0, 10);
    }

    [Fact]
    public void TheSummaryTellsOfAStand()
    {
        var points = Fronts[1].Front.FirstRecords(3).Select(p => p with { Time = p.Time + 1985 });
        var report = Spread.Measure(points, new() { Origin = SimulatedFront.Origin, RecordedUntil = 2024 });
        Assert.Equal(2, report.Phases.Count);
        Assert.Contains("The spread came to a stand about 200", report.Summary, StringComparison.Ordinal);
    }

    private static IReadOnlyList<SpreadPhase> Phases(SimulatedFront front, ulong seed)
    {
        var options = new SpreadOptions { Origin = SimulatedFront.Origin, RecordedUntil = 39 };
        return SpreadPhases.Measure(FirstRecords.FromPoints(front.FirstRecords(seed), options), null, options);
    }

    private static string Text(List<IReadOnlyList<SpreadPhase>> found) => found.Count == 0 ? "0 of 100" : string.Create(
        CultureInfo.InvariantCulture,
        $"{found.Count} of 100, break {found.Average(p => p[0].To):0.0}, speeds {found.Average(p => p[0].KmPerYear):0.0} {found.Average(p => p[1].KmPerYear):0.0}");
}
