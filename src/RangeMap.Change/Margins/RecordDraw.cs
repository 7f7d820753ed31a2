namespace RangeMap.Change;

/// <summary>
/// A draw of some records from a pool without replacement, made record by record as squares ask for it (docs/methods/margins.md, eq. 4).
/// A mutable value: pass it by <c>ref</c>.
/// </summary>
/// <remarks>
/// The next record is drawn with probability (still wanted) / (still in the pool). Once a square has a record its others need no
/// decision: undecided records of the pool are alike, so leaving them in it changes no probability.
/// </remarks>
internal struct RecordDraw
{
    private Pcg _chance;
    private long _pool;
    private long _wanted;

    /// <summary>Begins a draw.</summary>
    /// <param name="pool">M, records to draw from.</param>
    /// <param name="wanted">m, records to draw; at most <paramref name="pool"/>.</param>
    /// <param name="chance">A stream of its own.</param>
    public RecordDraw(long pool, long wanted, Pcg chance) => (_pool, _wanted, _chance) = (pool, wanted, chance);

    /// <summary>Whether the draw holds at least one of the records of a square that was not asked for before.</summary>
    /// <param name="records">Number of records of the square.</param>
    public bool Holds(int records)
    {
        for (; records > 0; records--)
        {
            var drawn = _chance.NextUnit() * _pool < _wanted;
            _pool--;
            if (!drawn)
                continue;
            _wanted--;
            return true;
        }

        return false;
    }

    /// <summary>The number of squares that a draw holds on average: the sum over squares of 1 - C(M - n, m) / C(M, m) (docs/methods/margins.md, eq. 5).</summary>
    /// <param name="records">n, the records of each square.</param>
    /// <param name="pool">M, at least their sum.</param>
    /// <param name="wanted">m, at most <paramref name="pool"/>.</param>
    public static double ExpectedSquares(ReadOnlySpan<int> records, long pool, long wanted)
    {
        var sum = 0.0;
        foreach (var n in records)
        {
            var none = 1.0;
            for (var i = 0; i < n; i++)
                none *= Math.Max(0, pool - wanted - i) / (double)(pool - i);
            sum += 1 - none;
        }

        return sum;
    }
}
