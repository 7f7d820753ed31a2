namespace RangeMap.Change;

/// <summary>Where recorders live and which cells they visit: near home, near towns, now and then anywhere.</summary>
internal sealed class SimulatedRecorders
{
    private const double ReachKm = 60;
    private const double HalfEffortKm = 12;
    private const double AwayShare = 0.12;

    private readonly int[][] _cells;
    private readonly double[][] _weights;
    private readonly int _landCells;

    internal SimulatedRecorders(SimulatedLand land, SimulatedOptions options)
    {
        var chance = new Pcg(options.Seed, 500);
        _landCells = land.Cells.Count;
        var towns = land.Towns(options.Towns, ref chance);
        var access = AccessOf(land, towns);
        _cells = new int[options.Recorders][];
        _weights = new double[options.Recorders][];
        for (var r = 0; r < options.Recorders; r++)
        {
            var home = land.Cells[HomeOf(towns, ref chance)];
            double x = home.X + 8 * chance.NextNormal(), y = home.Y + 8 * chance.NextNormal();
            _cells[r] = [.. Enumerable.Range(0, _landCells).Where(i => land.Cells[i].SquaredKm(x, y) <= ReachKm * ReachKm)];
            _weights[r] = RunningSum(_cells[r].Select(i => access[i] / (1 + land.Cells[i].SquaredKm(x, y) / (HalfEffortKm * HalfEffortKm))));
        }
    }

    /// <summary>The cell of a recorder's next visit.</summary>
    internal int CellOfVisit(int recorder, ref Pcg chance)
    {
        var cells = _cells[recorder];
        if (cells.Length == 0 || chance.NextChance(AwayShare))
            return chance.NextIndex(_landCells);

        var weights = _weights[recorder];
        var found = Array.BinarySearch(weights, chance.NextUnit() * weights[^1]);
        return cells[Math.Min(found < 0 ? ~found : found, cells.Length - 1)];
    }

    /// <summary>
    /// A recorder's index among those active: half of the visits are made by the busiest quarter, as the square of a uniform number gives.
    /// </summary>
    internal static int Next(int active, ref Pcg chance)
    {
        var u = chance.NextUnit();
        return (int)(active * u * u);
    }

    // The larger the town, the more recorders: the chance of the town of rank k falls as the square of a uniform number.
    private static int HomeOf(int[] towns, ref Pcg chance)
    {
        var u = chance.NextUnit();
        return towns[(int)(towns.Length * u * u)];
    }

    // 1 in a town, 0.6 at 15 km from one, 0.2 far from all.
    private static double[] AccessOf(SimulatedLand land, int[] towns) =>
        [.. land.Cells.Select(cell => 0.2 + 0.8 / (1 + towns.Min(t => land.Cells[t].SquaredKm(cell.X, cell.Y)) / 225))];

    private static double[] RunningSum(IEnumerable<double> weights)
    {
        double sum = 0;
        return [.. weights.Select(w => sum += w)];
    }
}
