namespace RangeMap.Change;

/// <summary>
/// The probability that a square keeps at least one of its records when a period is thinned, by its number of records:
/// 1 - C(M - n, m) / C(M, m) (docs/methods/margins.md, eq. 5).
/// </summary>
internal sealed class KeptShares
{
    private const int Tabled = 256;
    private readonly double[] _kept = new double[Tabled];

    /// <summary>Thins a period.</summary>
    /// <param name="pool">M, all records of the group.</param>
    /// <param name="wanted">m, records to be left; at most <paramref name="pool"/>.</param>
    internal KeptShares(long pool, long wanted)
    {
        (Pool, Wanted) = (pool, wanted);
        var none = 1.0;
        for (var n = 1; n < Tabled; n++)
        {
            none *= NoneOf(n - 1);
            _kept[n] = 1 - none;
        }
    }

    /// <summary>M.</summary>
    public long Pool { get; }

    /// <summary>m.</summary>
    public long Wanted { get; }

    /// <summary>The probability.</summary>
    /// <param name="records">n, at least 0 and at most the pool.</param>
    internal double Of(int records)
    {
        if (records < Tabled)
            return _kept[records];
        var none = 1 - _kept[Tabled - 1];
        for (var n = Tabled - 1; n < records && none > 1e-15; n++)
            none *= NoneOf(n);
        return 1 - none;
    }

    // Given that the first n records were passed over, the probability that the next is too.
    private double NoneOf(int n) => n < Pool ? Math.Max(0, Pool - Wanted - n) / (double)(Pool - n) : 0;
}
