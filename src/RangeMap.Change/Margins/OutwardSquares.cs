namespace RangeMap.Change;

/// <summary>The squares of a taxon in one period, the outermost first, and the mean of the ten outermost (docs/methods/margins.md, eq. 1).</summary>
internal sealed class OutwardSquares
{
    /// <summary>How many squares make a margin.</summary>
    internal const int Ten = 10;

    private readonly double[] _along;
    private readonly int[] _block;
    private readonly int[] _records;
    private readonly int[] _squares;

    private OutwardSquares(int count) =>
        (_along, _block, _records, _squares) = (new double[count], new int[count], new int[count], new int[count]);

    /// <summary>Number of squares.</summary>
    public int Count => _along.Length;

    /// <summary>The ten outermost, fewer where there are not ten.</summary>
    public ReadOnlySpan<int> Outermost => _squares.AsSpan(0, Math.Min(Ten, Count));

    /// <summary>Takes the squares of one period.</summary>
    /// <param name="range">The taxon.</param>
    /// <param name="records">Its records in that period.</param>
    /// <param name="order">Places in its list of squares, the outermost first.</param>
    /// <param name="margin">The direction.</param>
    /// <param name="blocks">Strips that hold the taxon.</param>
    public static OutwardSquares Of(TaxonRange range, int[] records, int[] order, MarginFrame margin, HeldBlocks blocks)
    {
        var (squares, n) = (new OutwardSquares(records.Length - records.AsSpan().Count(0)), 0);
        foreach (var place in order)
        {
            if (records[place] == 0)
                continue;
            var square = range.Squares[place];
            (squares._along[n], squares._block[n], squares._records[n], squares._squares[n]) = (margin.Along[square], blocks.Of(square), records[place], square);
            n++;
        }

        return squares;
    }

    /// <summary>Mean of the ten outermost, km outwards; NaN for fewer than ten.</summary>
    public double Mean()
    {
        if (Count < Ten)
            return double.NaN;
        var sum = 0.0;
        for (var i = 0; i < Ten; i++)
            sum += _along[i];
        return sum / Ten;
    }

    /// <summary>The same of a draw of strips, in which a square counts as often as its strip was drawn.</summary>
    public double Mean(ReadOnlySpan<byte> times)
    {
        var (left, sum) = (Ten, 0.0);
        for (var i = 0; i < _along.Length && left > 0; i++)
        {
            var k = Math.Min(left, times[_block[i]]);
            sum += k * _along[i];
            left -= k;
        }

        return left > 0 ? double.NaN : sum / Ten;
    }

    /// <summary>The same of a draw of records, in which a square counts where one of its records was drawn.</summary>
    /// <param name="pool">Records of the whole group.</param>
    /// <param name="wanted">Records to be drawn.</param>
    /// <param name="chance">A stream of its own.</param>
    public double Mean(long pool, long wanted, Pcg chance)
    {
        var draw = new RecordDraw(pool, wanted, chance);
        var (left, sum) = (Ten, 0.0);
        for (var i = 0; i < _along.Length && left > 0; i++)
        {
            if (!draw.Holds(_records[i]))
                continue;
            sum += _along[i];
            left--;
        }

        return left > 0 ? double.NaN : sum / Ten;
    }
}
