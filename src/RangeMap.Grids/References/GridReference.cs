using System.Globalization;

namespace RangeMap.Grids;

/// <summary>Reads and writes grid references in the forms that recorders use.</summary>
/// <remarks>
/// Read: the letters of the 100 km square (two for the British grid and the Channel Islands, one for the Irish grid, there
/// also with an I before it), then no figures or 2, 4, 6, 8, 10 or more; after two figures also a tetrad letter or a
/// quadrant (NE, SE, SW, NW). Small letters, full-width characters, spaces, hyphens, commas and strokes are taken as they
/// come. No shape is ambiguous: one letter is always Irish, so N45SE is Irish, NW87NE British, T12W an Irish tetrad.
/// </remarks>
public static class GridReference
{
    /// <summary>The longest reference that <see cref="TryFormat"/> writes.</summary>
    public const int LongestText = 12;

    /// <summary>Reads a person's text. On failure <paramref name="why"/> says in a sentence what is wrong and how to mend it; else it is null.</summary>
    /// <param name="text">Such as TQ38, tq 308 801, SP10NE, SO45K, J3374, IJ3374, WV6548.</param>
    /// <param name="options">What the data set says of its references.</param>
    /// <param name="square">The square named.</param>
    /// <param name="why">The reason of a failure.</param>
    public static bool TryParse(ReadOnlySpan<char> text, GridReferenceOptions options, out Square square, out string? why) =>
        TryParse(text, options, out square, out _, out why);

    /// <summary>Reads a person's text and tells also what was taken liberally.</summary>
    /// <param name="text">Such as TQ38, tq 308 801, SP10NE, SO45K, J3374, IJ3374, WV6548.</param>
    /// <param name="options">What the data set says of its references.</param>
    /// <param name="square">The square named.</param>
    /// <param name="notes">What should be said although the text was understood.</param>
    /// <param name="why">The reason of a failure.</param>
    public static bool TryParse(ReadOnlySpan<char> text, GridReferenceOptions options, out Square square, out GridReferenceNotes notes, out string? why)
    {
        var parts = default(ReferenceText);
        (square, notes) = (default, GridReferenceNotes.None);
        why = parts.Read(text) ?? GridReferenceReader.Read(parts, options, out square, out notes);
        return why is null;
    }

    /// <summary>The notes as sentences for people, none for <see cref="GridReferenceNotes.None"/>.</summary>
    public static IReadOnlyList<string> InWords(GridReferenceNotes notes) => GridReferenceFaults.InWords(notes);

    /// <summary>Reads a reference that a program wrote; WA and WV are read on ED50.</summary>
    /// <exception cref="FormatException">The text is no grid reference.</exception>
    public static Square Parse(string text) => Parse(text, default);

    /// <summary>Reads a reference that a program wrote; the options say on which datum WA and WV are.</summary>
    /// <exception cref="FormatException">The text is no grid reference.</exception>
    public static Square Parse(string text, GridReferenceOptions options) =>
        TryParse(text, options, out var square, out var why) ? square : throw new FormatException($"'{text}': {why}");

    /// <summary>The square's reference without spaces: TQ, TQ38, TQ38SE, TQ38A, TQ3080, TQ308801 ...</summary>
    /// <exception cref="ArgumentOutOfRangeException">The square lies outside the lettered area of its grid.</exception>
    public static string Format(Square square)
    {
        Span<char> text = stackalloc char[LongestText];
        TryFormat(square, text, out var length);
        return new string(text[..length]);
    }

    /// <summary>Writes the square's reference without spaces; false when the place is too short (<see cref="LongestText"/> always suffices).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The square lies outside the lettered area of its grid.</exception>
    public static bool TryFormat(Square square, Span<char> destination, out int length)
    {
        var letters = NationalGrid.Get(square.Grid).Letters(new(square.Easting, square.Northing))
            ?? throw new ArgumentOutOfRangeException(nameof(square), "The square lies outside the lettered area of its grid.");
        int east = square.Easting % 100_000, north = square.Northing % 100_000, side = FigureSide(square.Size);
        var figures = side switch { 100_000 => "", 10_000 => "0", 1_000 => "00", 100 => "000", 10 => "0000", _ => "00000" };
        return figures.Length == 0
            ? destination.TryWrite(CultureInfo.InvariantCulture, $"{letters}", out length)
            : TryWriteFigures(destination, letters, (east / side, north / side), figures, Suffix(square), out length);
    }

    private static bool TryWriteFigures(Span<char> destination, string letters, (int East, int North) figures, string width, ReadOnlySpan<char> suffix, out int length)
    {
        length = letters.Length + 2 * width.Length + suffix.Length;
        if (destination.Length < length)
            return false;
        letters.CopyTo(destination);
        var place = destination[letters.Length..];
        figures.East.TryFormat(place, out var written, width, CultureInfo.InvariantCulture);
        figures.North.TryFormat(place[written..], out _, width, CultureInfo.InvariantCulture);
        suffix.CopyTo(place[(2 * written)..]);
        return true;
    }

    /// <summary>The side that the figures express: that of the 10 km square for tetrads and quadrants.</summary>
    private static int FigureSide(SquareSize size) => size is SquareSize.Km2 or SquareSize.Km5 ? 10_000 : (int)size;

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
