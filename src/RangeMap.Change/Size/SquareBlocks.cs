namespace RangeMap.Change;

/// <summary>Squares gathered into coarse blocks, which count as independent of each other where single squares do not.</summary>
internal sealed class SquareBlocks
{
    private SquareBlocks(int[] ofSquare, int count) => (OfSquare, Count) = (ofSquare, count);

    /// <summary>The block of each square.</summary>
    public int[] OfSquare { get; }

    /// <summary>Number of blocks.</summary>
    public int Count { get; }

    /// <summary>Gathers squares by the place of their centres.</summary>
    public static SquareBlocks Of(IReadOnlyList<SurveySquare> squares, ChangeOptions options)
    {
        var side = options.SquareSideKm * options.BlockSquares;
        var numbers = new Dictionary<(long, long), int>();
        var ofSquare = new int[squares.Count];
        for (var i = 0; i < ofSquare.Length; i++)
        {
            var centre = squares[i].Centre;
            var key = ((long)Math.Floor(centre.X / side), (long)Math.Floor(centre.Y / side));
            if (!numbers.TryGetValue(key, out var number))
                numbers.Add(key, number = numbers.Count);
            ofSquare[i] = number;
        }

        return new(ofSquare, numbers.Count);
    }
}
