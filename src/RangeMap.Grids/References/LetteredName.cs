namespace RangeMap.Grids;

/// <summary>Writes the names of squares: letters or a code, figures of easting and northing, then a tetrad letter or a quadrant.</summary>
internal static class LetteredName
{
    private const int FiguresInLetteredSquare = 5;

    /// <summary>The name of a square on a lettered grid, such as TQ38SE; false when the place is too short.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The square lies outside the lettered area of its grid.</exception>
    public static bool TryWrite(INationalGrid grid, Square square, Span<char> destination, out int length)
    {
        var letters = grid.Letters(new(square.Easting, square.Northing))
            ?? throw new ArgumentOutOfRangeException(nameof(square), "The square lies outside the lettered area of its grid.");
        return TryWrite(letters, square, square.Easting % 100_000, square.Northing % 100_000, FiguresInLetteredSquare, destination, out length);
    }

    /// <summary>A name from its parts; false when the place is too short.</summary>
    /// <param name="prefix">The letters or the code.</param>
    /// <param name="square">The square, for its size and its place in the 10 km square.</param>
    /// <param name="east">Metres, of the corner, from where the figures count.</param>
    /// <param name="north">Metres, of the corner, from where the figures count.</param>
    /// <param name="figures">How many figures each coordinate has in whole metres; coarser squares leave the last ones off.</param>
    /// <param name="destination">Where to write.</param>
    /// <param name="length">The characters written.</param>
    public static bool TryWrite(string prefix, Square square, int east, int north, int figures, Span<char> destination, out int length)
    {
        var (side, dropped) = FigureSide(square.Size);
        var (suffix, half) = (Suffix(square), figures - dropped);
        length = prefix.Length + 2 * half + suffix.Length;
        if (destination.Length < length)
            return false;
        prefix.CopyTo(destination);
        Write(east / side, destination.Slice(prefix.Length, half));
        Write(north / side, destination.Slice(prefix.Length + half, half));
        suffix.CopyTo(destination[(length - suffix.Length)..]);
        return true;
    }

    /// <summary>The number with zeros in front, as many figures as there is room.</summary>
    private static void Write(int number, Span<char> place)
    {
        for (var k = place.Length - 1; k >= 0; k--, number /= 10)
            place[k] = (char)('0' + number % 10);
    }

    /// <summary>The side that the figures express (that of the 10 km square for tetrads and quadrants), and the figures that it leaves off.</summary>
    private static (int Side, int Dropped) FigureSide(SquareSize size) => size switch
    {
        SquareSize.M1 => (1, 0),
        SquareSize.M10 => (10, 1),
        SquareSize.M100 => (100, 2),
        SquareSize.Km1 => (1_000, 3),
        SquareSize.Km100 => (100_000, 5),
        _ => (10_000, 4),
    };

    private static string Suffix(Square square)
    {
        int east = square.Easting % 10_000, north = square.Northing % 10_000;
        return square.Size switch
        {
            SquareSize.Km2 => TetradLetter.At(east, north),
            SquareSize.Km5 => (east, north) switch { (0, 0) => "SW", (0, _) => "NW", (_, 0) => "SE", _ => "NE" },
            _ => "",
        };
    }
}
