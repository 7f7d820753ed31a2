namespace RangeMap.Change;

/// <summary>What was found where: numbers of records by square and taxon, readable from either side. Only finds are held, so its size is that of the data.</summary>
public sealed class FoundTable
{
    private readonly Rows _bySquare;
    private readonly Rows _byTaxon;

    private FoundTable(Rows bySquare, Rows byTaxon) => (_bySquare, _byTaxon) = (bySquare, byTaxon);

    /// <summary>Number of squares that have a find.</summary>
    public int SquaresWithFinds => _bySquare.NotEmpty;

    /// <summary>The taxa found in a square, ascending; <see cref="Find.Index"/> is the taxon.</summary>
    public ReadOnlySpan<Find> InSquare(int square) => _bySquare.Of(square);

    /// <summary>The squares where a taxon was found, ascending; <see cref="Find.Index"/> is the square.</summary>
    public ReadOnlySpan<Find> OfTaxon(int taxon) => _byTaxon.Of(taxon);

    /// <summary>Makes the table. A pair given twice is summed; one that sums to nothing is left out.</summary>
    /// <param name="squares">Number of squares; their indices are below it.</param>
    /// <param name="taxa">Number of taxa; their indices are below it.</param>
    /// <param name="finds">Square, taxon and number of records, in any order.</param>
    /// <exception cref="ArgumentOutOfRangeException">An index is outside its range, or a number of records negative.</exception>
    public static FoundTable Of(int squares, int taxa, IEnumerable<(int Square, int Taxon, int Records)> finds)
    {
        var all = finds.ToArray();
        foreach (var (square, taxon, records) in all)
        {
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)square, (uint)squares, nameof(finds));
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)taxon, (uint)taxa, nameof(finds));
            ArgumentOutOfRangeException.ThrowIfNegative(records, nameof(finds));
        }

        return new(Rows.Of(squares, all, find => (find.Square, find.Taxon)), Rows.Of(taxa, all, find => (find.Taxon, find.Square)));
    }

    /// <summary>Finds in rows one after another; row r lies between two starts.</summary>
    private sealed record Rows(int[] Starts, Find[] Finds, int NotEmpty)
    {
        public ReadOnlySpan<Find> Of(int row) => Finds.AsSpan(Starts[row], Starts[row + 1] - Starts[row]);

        public static Rows Of(int rows, (int Square, int Taxon, int Records)[] all, Func<(int Square, int Taxon, int Records), (int Row, int Index)> side)
        {
            var keys = Array.ConvertAll(all, find => ((long)side(find).Row << 32) | (uint)side(find).Index);
            var counts = Array.ConvertAll(all, find => find.Records);
            Array.Sort(keys, counts);

            var starts = new int[rows + 1];
            var finds = new List<Find>(all.Length);
            for (var i = 0; i < keys.Length;)
            {
                var (key, sum) = (keys[i], 0);
                for (; i < keys.Length && keys[i] == key; i++)
                    sum += counts[i];
                if (sum == 0)
                    continue;
                finds.Add(new((int)key, sum));
                starts[(int)(key >> 32) + 1] = finds.Count;
            }

            var notEmpty = 0;
            for (var row = 1; row <= rows; row++)
            {
                if (starts[row] == 0)
                    starts[row] = starts[row - 1];
                else
                    notEmpty++;
            }

            return new(starts, [.. finds], notEmpty);
        }
    }
}

/// <summary>One find of a row of a <see cref="FoundTable"/>.</summary>
/// <param name="Index">The taxon, or the square, as the side says from which it is read.</param>
/// <param name="Records">Number of records; at least 1.</param>
public readonly record struct Find(int Index, int Records);
