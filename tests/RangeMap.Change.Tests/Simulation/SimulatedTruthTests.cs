namespace RangeMap.Change.Tests;

/// <summary>The actors do what the scenario says, and the estimators find it out.</summary>
public class SimulatedTruthTests
{
    private static readonly SimulatedWorld World = InventedIsland.World(150_000);
    private static readonly IReadOnlyList<LandCell> Cells = World.Land.Cells;

    [Fact]
    public void TheArrivingSpeciesLandsAtTheEasternPortAndSpreadsAtItsSpeed()
    {
        var species = World.IndexOf(InventedRole.Arriving);
        var port = Cells[World.Truth.ArrivingPort];
        var points = Cells.Index()
            .Select(c => (c.Item, Arrival: World.Truth.Arrival(species, c.Index)))
            .Where(c => c.Arrival is not null and < 2025)
            .Select(c => new ArrivalPoint(c.Item.X, c.Item.Y, Math.Ceiling(c.Arrival!.Value)))
            .ToList();
        Assert.True(points.Count > 200);
        Assert.All(points, p => Assert.True(p.Time >= 2001));
        var front = Spread.Measure(points, new() { Origin = new(port.X, port.Y) }).By(SpreadMethods.FrontQuantile);
        Assert.InRange(front.KmPerYear!.Value, 0.93 * World.Truth.ArrivingSpeed, 1.07 * World.Truth.ArrivingSpeed);
    }

    [Fact]
    public void TheSpeedIsFoundAgainFromWhatRecordersReport()
    {
        var species = World.IndexOf(InventedRole.Arriving);
        var port = Cells[World.Truth.ArrivingPort];
        var points = World.Observations()
            .Where(r => r.NamedAs == species)
            .GroupBy(r => r.Visit.Cell)
            .Select(g => new ArrivalPoint(Cells[g.Key].X, Cells[g.Key].Y, g.Min(r => DateOnly.FromDayNumber(r.Visit.Day).Year)))
            .ToList();
        var report = Spread.Measure(points, new() { Origin = new(port.X, port.Y) });
        var front = report.By(SpreadMethods.FrontQuantile);
        Assert.InRange(front.KmPerYear!.Value, 0.85 * World.Truth.ArrivingSpeed, 1.15 * World.Truth.ArrivingSpeed);
    }

    [Fact]
    public void TheStallingSpeciesReachesNothingAfterItStalls()
    {
        var species = World.IndexOf(InventedRole.Stalling);
        var arrivals = Cells.Index().Select(c => World.Truth.Arrival(species, c.Index)).Where(a => a is not null and < 9999).ToList();
        Assert.True(arrivals.Count > 50);
        Assert.All(arrivals, a => Assert.InRange(a!.Value, 1989, World.Truth.Stalls));
    }

    [Fact]
    public void TheRetreatingSpeciesIsLostFromSouthToNorth()
    {
        var species = World.IndexOf(InventedRole.Retreating);
        var losses = Cells.Index().Where(c => World.Truth.Loss(species, c.Index) is not null)
            .Select(c => (c.Item.Y, Loss: World.Truth.Loss(species, c.Index)!.Value)).ToList();
        var line = LeastSquaresLine.Fit([.. losses.Select(l => l.Y)], [.. losses.Select(l => l.Loss)]);
        Assert.InRange(1 / line.Slope, 5.7, 6.3);
    }

    [Fact]
    public void TheScenarioNamesEachSpeciesOnceAndHasEveryActor()
    {
        Assert.InRange(World.Species.Count, 55, 70);
        Assert.Equal(World.Species.Count, World.Species.Select(s => s.Name).Distinct().Count());
        Assert.Equal(World.Species.Count, World.Species.Select(s => s.Vernacular).Distinct().Count());
        Assert.All(Enum.GetValues<InventedRole>(), role => Assert.Contains(World.Species, s => s.Role == role));
        Assert.Equal(2, World.Species.Count(s => s.Aggregate == InventedScenario.TwinAggregate));
        Assert.Single(World.Species, s => s.GeneraliseToKm is not null);
        Assert.All(World.Species.SelectMany(s => s.Seasons), s => Assert.True(s.FromWeek >= 1 && s.ToWeek <= 52 && s.FromWeek <= s.ToWeek));
    }

    [Fact]
    public void RecordersHaveDifferentNames() =>
        Assert.Equal(5000, Enumerable.Range(0, 5000).Select(InventedRecorders.NameOf).Distinct().Count());
}
