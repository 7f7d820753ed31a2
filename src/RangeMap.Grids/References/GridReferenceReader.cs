namespace RangeMap.Grids;

/// <summary>Turns a <see cref="ReferenceText"/> into the square that it names.</summary>
internal static class GridReferenceReader
{
    private const int FiguresInLetteredSquare = 5, FiguresOfTenKilometres = 2;

    private static readonly int[] PowersOfTen = [1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000];
    private static readonly NumberedGrid[] NumberedGrids = [.. NationalGrid.All.OfType<NumberedGrid>()];

    /// <summary>The square, with notes; or the reason why there is none.</summary>
    public static string? Read(in ReferenceText text, GridReferenceOptions options, out Square square, out GridReferenceNotes notes)
    {
        square = default;
        return FindLetters(text, options, out var grid, out var easting, out var northing, out notes)
            ?? (grid >= GridId.IrishTransverseMercator ? ReadNumbered(text, grid, out square, ref notes) : ReadFrom(text, new(grid, SquareSize.Km100, easting, northing), out square, ref notes));
    }

    /// <summary>The square that figures and suffix name within the lettered square; or the reason why there is none.</summary>
    public static string? ReadFrom(in ReferenceText text, Square lettered, out Square square, ref GridReferenceNotes notes)
    {
        square = default;
        if ((CheckFigures(text) ?? CheckSuffix(text, FiguresOfTenKilometres)) is { } fault)
            return fault;
        ReadFigures(text, FiguresInLetteredSquare, out var size, out var east, out var north, ref notes);
        AddSuffix(text, ref size, ref east, ref north);
        square = new(lettered.Grid, size, lettered.Easting + east, lettered.Northing + north);
        return null;
    }

    private static string? ReadNumbered(in ReferenceText text, GridId grid, out Square square, ref GridReferenceNotes notes)
    {
        square = default;
        if (text.FigureCount == 0)
            return GridReferenceFaults.NumberedWithoutFigures;
        if ((CheckFigures(text) ?? CheckSuffix(text, FiguresOfTenKilometres + 2)) is { } fault)
            return fault;
        ReadFigures(text, NumberedGrid.Figures, out var size, out var east, out var north, ref notes);
        AddSuffix(text, ref size, ref east, ref north);
        if (!NationalGrid.Get(grid).Contains(new(east, north)))
            return GridReferenceFaults.OutsideGrid(NationalGrid.Get(grid), east, north);
        square = new(grid, size, east, north);
        return null;
    }

    private static void AddSuffix(in ReferenceText text, ref SquareSize size, ref int east, ref int north)
    {
        if (text.Suffix == 1)
        {
            TetradLetter.TryFind(text.SuffixFirst, out var tetradEast, out var tetradNorth);
            (size, east, north) = (SquareSize.Km2, east + tetradEast, north + tetradNorth);
        }
        else if (text.Suffix == 2)
        {
            (size, east, north) = (SquareSize.Km5, east + (text.SuffixSecond == 'E' ? 5_000 : 0), north + (text.SuffixFirst == 'N' ? 5_000 : 0));
        }
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
            case 2 when BritishNationalGrid.TryFindCorner(text.First, text.Second, out easting, out northing):
                grid = GridId.British;
                return null;
            default:
                (easting, northing) = (0, 0);
                return TryFindNumbered(text, out grid) ? null
                    : text.Letters == 2 ? GridReferenceFaults.NoBritishSquare(text.First, text.Second)
                    : GridReferenceFaults.TooManyLetters(text.Letters);
        }
    }

    /// <summary>The grid without letters whose code stands before the figures; no such code is a lettered square.</summary>
    private static bool TryFindNumbered(in ReferenceText text, out GridId grid)
    {
        foreach (var numbered in NumberedGrids)
        {
            var code = numbered.Code;
            if (code.Length == text.Letters && code[0] == text.First && code[1] == text.Second && (code.Length == 2 || code[2] == text.Third))
            {
                grid = numbered.Id;
                return true;
            }
        }

        grid = default;
        return false;
    }

    private static string? CheckFigures(in ReferenceText text) =>
        text.Groups > 2 ? GridReferenceFaults.ManyGroups(text.Groups)
        : text.Groups == 2 && 2 * text.FirstGroup != text.FigureCount ? GridReferenceFaults.UnequalGroups(text.FirstGroup, text.FigureCount - text.FirstGroup)
        : text.FigureCount % 2 != 0 ? GridReferenceFaults.OddFigures(text.FigureCount)
        : null;

    /// <summary>The figures as metres, the first of <paramref name="most"/> standing for 10^(most - 1) m on each axis; more than those for 1 m are cut.</summary>
    private static void ReadFigures(in ReferenceText text, int most, out SquareSize size, out int east, out int north, ref GridReferenceNotes notes)
    {
        var half = text.FigureCount / 2;
        var (eastFigures, northFigures) = Math.DivRem(text.Figures, (ulong)PowersOfTen[half]);
        if (half > most)
        {
            notes |= GridReferenceNotes.ReadToOneMetre;
            var surplus = (ulong)PowersOfTen[half - most];
            (eastFigures, northFigures, half) = (eastFigures / surplus, northFigures / surplus, most);
        }

        var side = PowersOfTen[most - half];
        (size, east, north) = ((SquareSize)side, (int)eastFigures * side, (int)northFigures * side);
    }

    private static string? CheckSuffix(in ReferenceText text, int figures) => text.Suffix switch
    {
        0 => null,
        > 2 => GridReferenceFaults.SuffixTooLong(text.Suffix),
        _ when text.FigureCount != figures => figures == FiguresOfTenKilometres
            ? GridReferenceFaults.SuffixNeedsTwoFigures(text.Suffix, text.FigureCount)
            : GridReferenceFaults.SuffixNeedsFourFigures(text.FigureCount),
        1 => TetradLetter.TryFind(text.SuffixFirst, out _, out _) ? null : GridReferenceFaults.OIsNoTetradLetter,
        _ => text is { SuffixFirst: 'N' or 'S', SuffixSecond: 'E' or 'W' } ? null : GridReferenceFaults.NoQuadrant(text.SuffixFirst, text.SuffixSecond),
    };
}
