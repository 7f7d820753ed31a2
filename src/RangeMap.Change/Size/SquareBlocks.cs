namespace RangeMap.Change;

/// <summary>
/// Squares taken together where chance is drawn: squares side by side share ground, weather and recorders and are no independent
/// draws, so whole blocks of them are drawn with replacement (docs/methods/range-size.md, eq. 2).
/// </summary>
internal sealed class SquareBlocks
{
    private readonly int[] _blockOf;

    private SquareBlocks(int[] blockOf, int count, BlockDraws draws) => (_blockOf, Count, Draws) = (blockOf, count, draws);

    /// <summary>Number of blocks.</summary>
    public int Count { get; }

    /// <summary>The draws.</summary>
    public BlockDraws Draws { get; }

    /// <summary>The block of a square.</summary>
    public int Of(int square) => _blockOf[square];

    /// <summary>Blocks of equal sides, counted from the south-west.</summary>
    public static SquareBlocks Tiles(double[] x, double[] y, double sideKm, int squaresASide, BlockDraws draws) =>
        Of([.. Bands(x, sideKm, squaresASide).Zip(Bands(y, sideKm, squaresASide))], draws);

    /// <summary>Strips of equal width across one coordinate: each runs along the other from one end of the range to the other.</summary>
    public static SquareBlocks Strips(double[] across, double sideKm, int squaresASide, BlockDraws draws) =>
        Of([.. Bands(across, sideKm, squaresASide).Select(band => (band, 0L))], draws);

    private static SquareBlocks Of((long, long)[] places, BlockDraws draws)
    {
        var numbers = new Dictionary<(long, long), int>();
        var blockOf = new int[places.Length];
        for (var square = 0; square < places.Length; square++)
        {
            if (!numbers.TryGetValue(places[square], out blockOf[square]))
                numbers[places[square]] = blockOf[square] = numbers.Count;
        }

        return new(blockOf, numbers.Count, draws);
    }

    // Half a side is added so that upright squares lie clear of the lines between blocks.
    private static IEnumerable<long> Bands(double[] centres, double sideKm, int squaresASide)
    {
        var start = centres.DefaultIfEmpty().Min() - sideKm / 2;
        return centres.Select(centre => (long)Math.Floor((centre - start) / (squaresASide * sideKm)));
    }
}
