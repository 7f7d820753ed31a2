namespace RangeMap.Grids;

/// <summary>Reads a column of grid references. Nothing is allocated but the reasons of those that name no square.</summary>
/// <remarks>References are too short and too unlike one another for vector instructions to help; the gain is the caller's, who keeps one column.</remarks>
public static class GridReferenceBatch
{
    /// <summary>Reads every text; one that names no square leaves the square that is default there.</summary>
    /// <param name="texts">The references.</param>
    /// <param name="options">What the data set says of its references.</param>
    /// <param name="squares">At least as long as <paramref name="texts"/>.</param>
    /// <returns>How many named a square.</returns>
    /// <exception cref="ArgumentException">There is not room for every square.</exception>
    public static int Parse(ReadOnlySpan<string> texts, GridReferenceOptions options, Span<Square> squares)
    {
        if (squares.Length < texts.Length)
            throw new ArgumentException($"There is room for {squares.Length} squares, but {texts.Length} texts were given.", nameof(squares));
        var read = 0;
        for (var k = 0; k < texts.Length; k++)
            read += GridReference.TryParse(texts[k], options, out squares[k], out _) ? 1 : 0;
        return read;
    }
}
