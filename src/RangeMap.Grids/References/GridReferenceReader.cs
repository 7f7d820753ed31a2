namespace RangeMap.Grids;

/// <summary>Turns a <see cref="ReferenceText"/> into the square that it names.</summary>
internal static class GridReferenceReader
{
    private static readonly int[] PowersOfTen = [1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000];

    /// <summary>The square, with notes; or the reason why there is none.</summary>
    public static string? Read(in ReferenceText text, GridReferenceOptions options, out Square square, out GridReferenceNotes notes)
    {
        square = default;
        var fault = FindLetters(text, options, out var grid, out var easting, out var northing, out notes)
            ?? CheckFigures(text)
            ?? CheckSuffix(text);
        if (fault is not null)
            return fault;
        ReadFigures(text, out var size, out var east, out var north, ref notes);
        if (text.Suffix == 1)
        {
            TetradLetter.TryFind(text.SuffixFirst, out var tetradEast, out var tetradNorth);
            (size, east, north) = (SquareSize.Km2, east + tetradEast, north + tetradNorth);
        }
        else if (text.Suffix == 2)
        {
            (size, east, north) = (SquareSize.Km5, east + (text.SuffixSecond == 'E' ? 5_000 : 0), north + (text.SuffixFirst == 'N' ? 5_000 : 0));
        }

        square = new(grid, size, easting + east, northing + north);
        return null;
    }

    private static string? FindLetters(in ReferenceText text, GridReferenceOptions options, out GridId grid, out int easting, out int northing, out GridReferenceNotes notes)
    {
        (grid, easting, northing, notes) = (default, 0, 0, GridReferenceNotes.None);
        switch (text.Letters)
        {
            case 0:
                return text.FigureCount == 0 ? GridReferenceFaults.Empty : GridReferenceFaults.NoLetters;
            case 1:
                grid = GridId.Irish;
                return IrishGrid.TryFindCorner(text.First, out easting, out northing) ? null : GridReferenceFaults.IIsNoIrishLetter;
            case 2 when text.First == 'I':
                (grid, notes) = (GridId.Irish, GridReferenceNotes.LeadingILeftOut);
                return IrishGrid.TryFindCorner(text.Second, out easting, out northing) ? null : GridReferenceFaults.IIsNoIrishLetter;
            case 2 when ChannelIslandsLetters.TryFindCorner(text.First, text.Second, out easting, out northing):
                (grid, notes) = options.ChannelIslandsWgs84
                    ? (GridId.ChannelIslandsWgs84, GridReferenceNotes.None)
                    : (GridId.ChannelIslands, GridReferenceNotes.ChannelIslandsDatumAssumed);
                return null;
            case 2:
                grid = GridId.British;
                return BritishNationalGrid.TryFindCorner(text.First, text.Second, out easting, out northing) ? null : GridReferenceFaults.NoBritishSquare(text.First, text.Second);
            default:
                return GridReferenceFaults.TooManyLetters(text.Letters);
        }
    }

    private static string? CheckFigures(in ReferenceText text) =>
        text.Groups > 2 ? GridReferenceFaults.ManyGroups(text.Groups)
        : text.Groups == 2 && 2 * text.FirstGroup != text.FigureCount ? GridReferenceFaults.UnequalGroups(text.FirstGroup, text.FigureCount - text.FirstGroup)
        : text.FigureCount % 2 != 0 ? GridReferenceFaults.OddFigures(text.FigureCount)
        : null;

    /// <summary>The figures as metres within the 100 km square: 0, 2, 4, 6, 8 or 10 of them; more are cut to ten.</summary>
    private static void ReadFigures(in ReferenceText text, out SquareSize size, out int east, out int north, ref GridReferenceNotes notes)
    {
        var half = text.FigureCount / 2;
        var (eastFigures, northFigures) = Math.DivRem(text.Figures, (ulong)PowersOfTen[half]);
        if (half > 5)
        {
            notes |= GridReferenceNotes.ReadToOneMetre;
            var surplus = (ulong)PowersOfTen[half - 5];
            (eastFigures, northFigures, half) = (eastFigures / surplus, northFigures / surplus, 5);
        }

        var side = PowersOfTen[5 - half];
        (size, east, north) = ((SquareSize)side, (int)eastFigures * side, (int)northFigures * side);
    }

    private static string? CheckSuffix(in ReferenceText text) => text.Suffix switch
    {
        0 => null,
        > 2 => GridReferenceFaults.SuffixTooLong(text.Suffix),
        _ when text.FigureCount != 2 => GridReferenceFaults.SuffixNeedsTwoFigures(text.Suffix, text.FigureCount),
        1 => TetradLetter.TryFind(text.SuffixFirst, out _, out _) ? null : GridReferenceFaults.OIsNoTetradLetter,
        _ => text is { SuffixFirst: 'N' or 'S', SuffixSecond: 'E' or 'W' } ? null : GridReferenceFaults.NoQuadrant(text.SuffixFirst, text.SuffixSecond),
    };
}
