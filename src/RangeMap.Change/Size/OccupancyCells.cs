namespace RangeMap.Change;

/// <summary>
/// How the squares of a survey lie in larger cells. Squares coarser than 2 km lie in cells of twice their side, in each of the four ways in
/// which such cells can be laid over them; squares finer than 2 km lie in the 2 km cells of the plane.
/// </summary>
internal sealed class OccupancyCells
{
    /// <summary>Side of the cells in which area of occupancy is counted, km.</summary>
    internal const double ReferenceKm = 2;

    private readonly int[][] _cellOf;

    private OccupancyCells(int[][] cellOf, bool coarser) => (_cellOf, Coarser) = (cellOf, coarser);

    /// <summary>True where the squares are coarser than 2 km and the area must be scaled down.</summary>
    public bool Coarser { get; }

    /// <summary>Lays the cells over squares.</summary>
    public static OccupancyCells Of(double[] x, double[] y, double sideKm)
    {
        // Sides of squares that stand askew on the plane differ from the name by a little.
        var coarser = sideKm > ReferenceKm * 1.05;
        if (!coarser)
            return new([Number(x.Zip(y, (east, north) => (Whole(east / ReferenceKm), Whole(north / ReferenceKm))))], false);

        var (east, north) = (x.DefaultIfEmpty().Min(), y.DefaultIfEmpty().Min());
        int[] Laid(int right, int up) => Number(x.Zip(y, (a, b) => (Whole((Math.Round((a - east) / sideKm) + right) / 2), Whole((Math.Round((b - north) / sideKm) + up) / 2))));
        return new([Laid(0, 0), Laid(1, 0), Laid(0, 1), Laid(1, 1)], true);
    }

    /// <summary>
    /// The share of each square in the number of occupied cells, so that the shares of some squares sum to it: 1 by the number of occupied
    /// squares of its cell, averaged over the ways of laying the cells.
    /// </summary>
    /// <param name="squares">Squares.</param>
    /// <param name="records">Records in each of them; those with none are not occupied and have no share.</param>
    public double[] Shares(ReadOnlySpan<int> squares, ReadOnlySpan<int> records)
    {
        var shares = new double[squares.Length];
        Span<int> taken = new int[_cellOf[0].Length];
        foreach (var cellOf in _cellOf)
        {
            taken.Clear();
            for (var i = 0; i < squares.Length; i++)
                taken[cellOf[squares[i]]] += records[i] > 0 ? 1 : 0;
            for (var i = 0; i < squares.Length; i++)
                shares[i] += records[i] > 0 ? 1.0 / taken[cellOf[squares[i]]] / _cellOf.Length : 0;
        }

        return shares;
    }

    private static long Whole(double value) => (long)Math.Floor(value);

    private static int[] Number(IEnumerable<(long, long)> cells)
    {
        var numbers = new Dictionary<(long, long), int>();
        return [.. cells.Select(cell => numbers.TryGetValue(cell, out var number) ? number : numbers[cell] = numbers.Count)];
    }
}
