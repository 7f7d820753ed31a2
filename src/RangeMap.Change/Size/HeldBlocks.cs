namespace RangeMap.Change;

/// <summary>The blocks that hold a taxon, numbered anew from 0, and the variance that drawing them gives.</summary>
internal sealed class HeldBlocks
{
    // Share of the draws that must hold enough for the statistic.
    private const double LeastShareOfDraws = 0.9;

    private readonly SquareBlocks _blocks;
    private readonly int[] _numberOf;

    private HeldBlocks(SquareBlocks blocks, int[] numberOf, int count) => (_blocks, _numberOf, Count) = (blocks, numberOf, count);

    /// <summary>A statistic of one draw; not finite where the draw holds too little for it.</summary>
    /// <param name="times">How many times the draw holds each of the blocks.</param>
    internal delegate double Statistic(ReadOnlySpan<byte> times);

    /// <summary>Number of blocks that hold the taxon.</summary>
    public int Count { get; }

    /// <summary>The number of the block of a square that holds the taxon.</summary>
    public int Of(int square) => _numberOf[_blocks.Of(square)] - 1;

    /// <summary>Numbers the blocks of some squares in the order in which they come.</summary>
    public static HeldBlocks Of(SquareBlocks blocks, ReadOnlySpan<int> squares)
    {
        var (numberOf, count) = (new int[blocks.Count], 0);
        foreach (var square in squares)
        {
            ref var number = ref numberOf[blocks.Of(square)];
            if (number == 0)
                number = ++count;
        }

        return new(blocks, numberOf, count);
    }

    /// <summary>
    /// Variance of a statistic over the draws, times b / (b - 1) for the b blocks, which drawing understates by that much; null where
    /// fewer than nine draws in ten have the statistic.
    /// </summary>
    public double? Variance(Statistic statistic)
    {
        var moments = new Moments();
        var times = _blocks.Draws.Of(Count);
        for (var draw = 0; draw < _blocks.Draws.Count; draw++)
        {
            var value = statistic(times.AsSpan(draw * Count, Count));
            if (double.IsFinite(value))
                moments.Add(value);
        }

        return Count < 2 || moments.N < LeastShareOfDraws * _blocks.Draws.Count ? null : moments.Variance * Count / (Count - 1);
    }
}
