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
    public static TaxonCube Gather(Span<CubeCell> cells)
    {
        cells.Sort();
        return new(Sum(cells));
    }

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
        Array.Sort(cells);
        return new(Sum(cells));
    }

    private static CubeCell[] Sum(ReadOnlySpan<CubeCell> sorted)
    {
        var summed = new CubeCell[sorted.Length];
        var count = 0;
        for (var i = 0; i < sorted.Length;)
        {
            var cell = sorted[i++];
            while (i < sorted.Length && sorted[i].SamePlaceAndTime(cell))
                cell = cell with { Counts = cell.Counts + sorted[i++].Counts };
            if (!cell.Counts.IsZero)
                summed[count++] = cell;
        }

        Array.Resize(ref summed, count);
        return summed;
    }
}
