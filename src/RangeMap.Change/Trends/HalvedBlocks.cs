namespace RangeMap.Change;

/// <summary>
/// Compact blocks of nearly equal numbers of squares: halves of halves, cut across the longer side. They serve where a sum over blocks
/// estimates a variance and each must weigh alike; <see cref="SquareBlocks"/> of equal sides serve where blocks are drawn.
/// </summary>
internal static class HalvedBlocks
{
    private const int MostBlocks = 64;
    private const int LeastSquares = 8;

    /// <summary>Number of the block of each square, from 0, or -1; at most 64 blocks, of at least four squares where there are as many.</summary>
    /// <param name="squares">All squares.</param>
    /// <param name="counts">Which of them count; the others get -1.</param>
    internal static int[] Of(IReadOnlyList<SurveySquare> squares, Func<int, bool> counts)
    {
        var (blocks, next) = (new int[squares.Count], 0);
        Array.Fill(blocks, -1);
        (PlanePoint Centre, int Square)[] part = [.. Enumerable.Range(0, squares.Count).Where(counts).Select(i => (squares[i].Centre, i))];
        Split(part, Math.Max(LeastSquares, (part.Length + MostBlocks - 1) / MostBlocks), blocks, ref next);
        return blocks;
    }

    private static void Split((PlanePoint Centre, int Square)[] part, int most, int[] blocks, ref int next)
    {
        if (part.Length <= most)
        {
            foreach (var (_, square) in part)
                blocks[square] = next;
            next++;
            return;
        }

        var wide = part.Max(p => p.Centre.X) - part.Min(p => p.Centre.X) >= part.Max(p => p.Centre.Y) - part.Min(p => p.Centre.Y);
        Array.Sort(part, (a, b) => (wide ? a.Centre.X : a.Centre.Y, a.Square).CompareTo((wide ? b.Centre.X : b.Centre.Y, b.Square)));
        Split(part[..(part.Length / 2)], most, blocks, ref next);
        Split(part[(part.Length / 2)..], most, blocks, ref next);
    }
}
