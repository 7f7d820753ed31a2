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
}
