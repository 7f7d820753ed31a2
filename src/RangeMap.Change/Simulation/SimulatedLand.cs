namespace RangeMap.Change;

/// <summary>The land of the simulated world, with its invented towns.</summary>
/// <remarks>The land is handed in, so that the world knows no files; the towns are drawn from it and have no names.</remarks>
public sealed class SimulatedLand
{
    private readonly Func<LandCell, int, int, bool> _isLand;

    /// <summary>Takes the land.</summary>
    /// <param name="cells">10 km squares with land, at least one; their order is part of what the seed decides.</param>
    /// <param name="isLand">Tells of a cell and an easting and northing in it (metres) whether the place is land; null when all is.</param>
    /// <exception cref="ArgumentException">There is no cell.</exception>
    public SimulatedLand(IEnumerable<LandCell> cells, Func<LandCell, int, int, bool>? isLand = null)
    {
        Cells = [.. cells];
        if (Cells.Count == 0)
            throw new ArgumentException("The world needs at least one square of land.", nameof(cells));
        (South, North) = (Cells.Min(c => c.Y), Cells.Max(c => c.Y));
        _isLand = isLand ?? ((_, _, _) => true);
    }

    /// <summary>The cells, by index.</summary>
    public IReadOnlyList<LandCell> Cells { get; }

    /// <summary>True when the place is land.</summary>
    public bool IsLand(LandCell cell, int easting, int northing) => _isLand(cell, easting, northing);

    /// <summary>Index of the easternmost cell between a fifth and nine twentieths of the way from the southern end to the northern.</summary>
    public int EasternPort() => Enumerable.Range(0, Cells.Count)
        .Where(i => Height(Cells[i]) is >= 0.2 and <= 0.45)
        .DefaultIfEmpty(0)
        .MaxBy(i => Cells[i].X);

    /// <summary>Index of the southernmost cell between nine twentieths and thirteen twentieths of the way from the western end to the eastern.</summary>
    public int SouthernPort()
    {
        double west = Cells.Min(c => c.X), width = Cells.Max(c => c.X) - west;
        return Enumerable.Range(0, Cells.Count)
            .Where(i => Cells[i].X >= west + 0.45 * width && Cells[i].X <= west + 0.65 * width)
            .DefaultIfEmpty(0)
            .MinBy(i => Cells[i].Y);
    }

    /// <summary>Cells of towns, the largest first: no two within 25 km while there is room.</summary>
    internal int[] Towns(int number, ref Pcg chance)
    {
        var towns = new List<int>();
        for (var tries = 0; towns.Count < number && tries < 40 * number; tries++)
        {
            var cell = chance.NextIndex(Cells.Count);
            // More towns in the south: the chance to keep one falls evenly to a fifth at the northern end.
            var south = 1 - 0.8 * Height(Cells[cell]);
            if (chance.NextChance(south) && towns.TrueForAll(t => Cells[t].SquaredKm(Cells[cell].X, Cells[cell].Y) > 625))
                towns.Add(cell);
        }

        return towns.Count > 0 ? [.. towns] : [0];
    }

    /// <summary>0 at the southern end of the land, 1 at the northern.</summary>
    internal double Height(LandCell cell) => (cell.Y - South) / Math.Max(1, North - South);

    internal double South { get; }

    internal double North { get; }
}
