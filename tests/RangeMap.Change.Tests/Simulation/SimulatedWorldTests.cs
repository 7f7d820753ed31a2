namespace RangeMap.Change.Tests;

public class SimulatedWorldTests
{
    private static readonly SimulatedWorld World = InventedIsland.World(40_000);
    private static readonly SimulatedObservation[] Rows = [.. World.Observations()];

    [Fact]
    public void AsManyRowsAsAskedForAreGiven() => Assert.Equal(40_000, Rows.Length);

    [Fact]
    public void TheSameSeedGivesTheSameRowsOnEveryMachine()
    {
        Assert.Equal(Rows, InventedIsland.World(40_000).Observations());
        Assert.Equal(9637077782905003341UL, HashOf(Rows));
    }

    [Fact]
    public void AnotherSeedGivesOtherRows() =>
        Assert.NotEqual(HashOf(Rows), HashOf([.. InventedIsland.World(40_000, seed: 2).Observations()]));

    [Fact]
    public void WhatIsSeenIsThere() =>
        Assert.All(Rows, row => Assert.True(World.Truth.Present(row.Species, row.Visit.Cell, TimeOf(row))));

    [Fact]
    public void APlaceLiesInItsCell() => Assert.All(Rows, row =>
    {
        var cell = World.Land.Cells[row.Visit.Cell];
        Assert.Equal(cell.Grid, row.Visit.Grid);
        Assert.InRange(row.Visit.Easting, cell.Easting, cell.Easting + LandCell.SideMetres - 1);
        Assert.InRange(row.Visit.Northing, cell.Northing, cell.Northing + LandCell.SideMetres - 1);
    });

    [Fact]
    public void AStageIsSeenInItsWeeks() => Assert.All(Rows, row =>
    {
        var season = World.Species[row.Species].Seasons.Single(s => s.Stage == row.Stage);
        Assert.InRange(WeekOf(row), season.FromWeek, season.ToWeek);
        Assert.True(row.LengthMm is null || (row.LengthMm >= (float)season.LeastMm && row.LengthMm <= (float)season.MostMm));
    });

    [Fact]
    public void EffortGrowsFromDecadeToDecade()
    {
        var decades = Rows.GroupBy(r => (YearOf(r) - 1985) / 10).OrderBy(g => g.Key).ToList();
        Assert.Equal(4, decades.Count);
        for (var i = 1; i < 4; i++)
        {
            Assert.True(decades[i].Count() > 1.3 * decades[i - 1].Count());
            Assert.True(decades[i].Select(r => r.Visit.Cell).Distinct().Count() > decades[i - 1].Select(r => r.Visit.Cell).Distinct().Count());
        }
    }

    [Fact]
    public void AVisitIsOnePlaceOneDayAndOneRecorderAndNamesASpeciesOnce()
    {
        foreach (var visit in Rows.GroupBy(r => r.Visit.Number))
        {
            Assert.Single(visit.Select(r => r.Visit).Distinct());
            Assert.Equal(visit.Count(), visit.Select(r => r.Species).Distinct().Count());
        }
    }

    [Fact]
    public void ThePairIsMostlyNamedToTheAggregateAndAloneMistaken()
    {
        var pair = Rows.Where(r => World.Species[r.Species].Aggregate is not null).ToList();
        Assert.InRange(pair.Count(r => r.ToAggregate) / (double)pair.Count, 0.5, 0.8);
        Assert.Contains(pair, r => r.Mistaken);
        Assert.All(Rows.Where(r => r.Mistaken), r => Assert.Equal(World.Species[r.Species].ConfusedWith, World.Species[r.NamedAs].Name));
        Assert.All(Rows.Where(r => r.ToAggregate), r => Assert.NotNull(World.Species[r.Species].Aggregate));
    }

    [Fact]
    public void AWorldOfOneSquareEndsRatherThanSearchesForEver()
    {
        var world = new SimulatedWorld(new([LandCell.British(400_000, 300_000)]), new() { Rows = 100, Years = 2 });
        Assert.InRange(world.Observations().Count(), 0, 100);
    }

    [Fact]
    public void PlacesAtSeaAreAvoided()
    {
        // The eastern half of every square is sea.
        var land = new SimulatedLand(InventedIsland.Land.Cells, (cell, easting, _) => easting < cell.Easting + 5000);
        var rows = new SimulatedWorld(land, new() { Rows = 5000 }).Observations().ToList();
        var atSea = rows.Count(r => r.Visit.Easting >= land.Cells[r.Visit.Cell].Easting + 5000);
        Assert.InRange(atSea / 5000.0, 0, 0.12);
    }

    private static double TimeOf(SimulatedObservation row) => YearOf(row) + (WeekOf(row) - 0.5) / 52;

    private static int YearOf(SimulatedObservation row) => DateOnly.FromDayNumber(row.Visit.Day).Year;

    private static int WeekOf(SimulatedObservation row) => (DateOnly.FromDayNumber(row.Visit.Day).DayOfYear - 1) / 7 + 1;

    // FNV-1a over the numbers of each row.
    private static ulong HashOf(IEnumerable<SimulatedObservation> rows)
    {
        var hash = 14695981039346656037;
        foreach (var row in rows)
        {
            foreach (var part in (ReadOnlySpan<int>)[row.Visit.Day, row.Visit.Easting, row.Visit.Northing, row.Visit.PrecisionMetres, row.Visit.Recorder, row.NamedAs, row.Count, (int)row.Stage, BitConverter.SingleToInt32Bits(row.LengthMm ?? 0)])
                hash = (hash ^ (uint)part) * 1099511628211;
        }

        return hash;
    }
}
