namespace RangeMap.Presence;

/// <summary>
/// All that maps need to know of one taxon: its records counted by square and days. Cubes form a group under
/// addition, so importing adds a cube, undoing subtracts it, and the order of imports does not matter.
/// </summary>
public sealed class TaxonCube
{
    private readonly CubeCell[] _cells;

    private TaxonCube(CubeCell[] sortedDistinctNonZero) => _cells = sortedDistinctNonZero;

    /// <summary>The cube without records.</summary>
    public static TaxonCube Empty { get; } = new([]);

    /// <summary>The cells, ascending, each place and time once, none of them zero.</summary>
    public ReadOnlySpan<CubeCell> Cells => _cells;

    /// <summary>Gathers cells in any order into a cube; equal places and times are summed.</summary>
    public static TaxonCube Gather(IEnumerable<CubeCell> cells)
    {
        var sorted = cells.ToArray();
        return Settle(sorted);
    }

    /// <summary>Gathers cells in any order, sorting the given memory in place.</summary>
    public static TaxonCube Gather(Span<CubeCell> cells) => new(cells[..SumInPlace(cells)].ToArray());

    /// <summary>The sum of cubes.</summary>
    public static TaxonCube Sum(IReadOnlyCollection<TaxonCube> cubes)
    {
        if (cubes.Count == 1)
            return cubes.First();
        var all = new CubeCell[cubes.Sum(cube => cube._cells.Length)];
        var at = 0;
        foreach (var cube in cubes)
        {
            cube._cells.CopyTo(all, at);
            at += cube._cells.Length;
        }

        return Settle(all);
    }

    /// <summary>The cube that takes this one back.</summary>
    public TaxonCube Negate() => new(Array.ConvertAll(_cells, cell => cell with { Counts = -cell.Counts }));

    private static TaxonCube Settle(CubeCell[] cells)
    {
        Array.Resize(ref cells, SumInPlace(cells));
        return new(cells);
    }

    /// <summary>Sorts cells and sums equal places and times, all in the memory given; the number of cells that are left at its beginning.</summary>
    internal static int SumInPlace(Span<CubeCell> cells)
    {
        cells.Sort();
        var count = 0;
        for (var i = 0; i < cells.Length;)
        {
            var cell = cells[i++];
            while (i < cells.Length && cells[i].SamePlaceAndTime(cell))
                cell = cell with { Counts = cell.Counts + cells[i++].Counts };
            if (!cell.Counts.IsZero)
                cells[count++] = cell;
        }

        return count;
    }
}
