namespace RangeMap.Grids;

/// <summary>Reads and writes grid references in the forms that recorders use.</summary>
/// <remarks>
/// Read: the letters of the 100 km square (two for the British grid and the Channel Islands, one for the Irish grid, there
/// also with an I before it), then no figures or 2, 4, 6, 8, 10 or more; after two figures also a tetrad letter or a
/// quadrant (NE, SE, SW, NW). Small letters, full-width characters, spaces, hyphens, commas and strokes are taken as they
/// come. No lettered shape is ambiguous: one letter is always Irish, so N45SE is Irish, NW87NE British, T12W an Irish tetrad.
/// Also: ITM and RD with figures (ITM 715830 734697, RD 155-463), military grid references (30UXC 99 12), cell codes of the European grid
/// (10kmE342N321), UTM eastings and northings with their zone, and plain eastings and northings where the grid is stated, in the text
/// (EPSG:27700 530000 180000) or in the options; where it is not, they are refused with the grids that they could be on.
/// </remarks>
public static class GridReference
{
    /// <summary>The longest reference that <see cref="TryFormat"/> writes.</summary>
    public const int LongestText = 20;

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
        why = UnletteredReader.Takes(text)
            ? UnletteredReader.Read(text, options, out square, out notes)
            : parts.Read(text) ?? GridReferenceReader.Read(parts, options, out square, out notes);
        if (why is null && options.System is { } stated && stated != square.Grid)
            why = CheckStated(stated, ref square, ref notes);
        return why is null;
    }

    /// <summary>Null when the square is on the grid stated, or can be put there because only the datum of its letters was open.</summary>
    private static string? CheckStated(GridId stated, ref Square square, ref GridReferenceNotes notes)
    {
        if ((square.Grid, stated) is (GridId.ChannelIslands, GridId.ChannelIslandsWgs84) or (GridId.ChannelIslandsWgs84, GridId.ChannelIslands))
        {
            square = new(stated, square.Size, square.Easting, square.Northing);
            notes &= ~GridReferenceNotes.ChannelIslandsDatumAssumed;
            return null;
        }

        var fault = GridReferenceFaults.NotOfStatedGrid(NationalGrid.Get(square.Grid), NationalGrid.Get(stated));
        square = default;
        return fault;
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
    public static bool TryFormat(Square square, Span<char> destination, out int length) =>
        NationalGrid.Get(square.Grid).TryWriteName(square, destination, out length);
}
