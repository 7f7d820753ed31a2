namespace RangeMap.Change;

/// <summary>The squares of one taxon in the two periods that are compared.</summary>
internal sealed class TaxonRange
{
    private TaxonRange(int taxon, int[] squares, int[] before, int[] after)
    {
        (Taxon, Squares, Before, After) = (taxon, squares, before, after);
        CountBefore = before.Length - before.AsSpan().Count(0);
        CountAfter = after.Length - after.AsSpan().Count(0);
    }

    /// <summary>Index of the taxon.</summary>
    public int Taxon { get; }

    /// <summary>Every square where it was found in either period, ascending.</summary>
    public int[] Squares { get; }

    /// <summary>Records in each of those squares in the earlier period; 0 where it was not found.</summary>
    public int[] Before { get; }

    /// <summary>Records in each of those squares in the later period.</summary>
    public int[] After { get; }

    /// <summary>Number of squares of the earlier period.</summary>
    public int CountBefore { get; }

    /// <summary>Number of squares of the later period.</summary>
    public int CountAfter { get; }

    /// <summary>Reads a taxon's squares from both periods.</summary>
    public static TaxonRange Of(int taxon, ReadOnlySpan<Find> before, ReadOnlySpan<Find> after)
    {
        var most = before.Length + after.Length;
        var (squares, first, second, n) = (new int[most], new int[most], new int[most], 0);
        for (int i = 0, j = 0; i < before.Length || j < after.Length; n++)
        {
            var square = Math.Min(i < before.Length ? before[i].Index : int.MaxValue, j < after.Length ? after[j].Index : int.MaxValue);
            squares[n] = square;
            if (i < before.Length && before[i].Index == square)
                first[n] = before[i++].Records;
            if (j < after.Length && after[j].Index == square)
                second[n] = after[j++].Records;
        }

        return new(taxon, squares[..n], first[..n], second[..n]);
    }
}
