using System.Globalization;

namespace RangeMap.Grids;

/// <summary>Every reason why a text is no grid reference, as a sentence that says how to mend it; and what is noted of one that is.</summary>
internal static class GridReferenceFaults
{
    public const string Empty = "There is no grid reference: the text is empty.";
    public const string NoLetters = "A grid reference begins with the letters of its 100 km square, as in TQ3080: put them before the figures.";
    public const string DotAmongFigures = "A dot stands between figures: give whole figures without a decimal point, as in TQ 308 801.";
    public const string IIsNoIrishLetter = "The letter I is not used for an Irish 100 km square: give one of A to Z without I.";
    public const string OIsNoTetradLetter = "O is not used in tetrad letters: A to Z without O are.";
    public const string NumberedWithoutFigures = "The code of a grid without letters needs figures behind it, as in ITM 715 734: give the same number for easting and northing.";
    public const string NoCellCode = "This is no cell code of the European grid: write one such as 10kmE342N321 or CRS3035RES10000mN3210000E3420000.";
    public static readonly string TooManyFigures = $"More than {ReferenceText.MostFigures} figures: give at most 10, which name a square of 1 m.";

    public static string TooLong(int length) => Text($"{length} characters are too many for a grid reference: give one reference, such as TQ3080.");

    public static string StrangeCharacter(char ch) => char.IsControl(ch) || char.IsSurrogate(ch)
        ? Text($"The character U+{(int)ch:X4} does not belong in a grid reference: take it out.")
        : Text($"The character '{ch}' does not belong in a grid reference: take it out.");

    public static string LetterAmongFigures(char letter) => letter switch
    {
        'O' => "The letter O stands among the figures: write the figure 0.",
        'I' or 'L' => Text($"The letter {letter} stands among the figures: write the figure 1."),
        _ => Text($"The letter {letter} stands among the figures: leave it out, or write figures on both sides without it."),
    };

    public static string TooManyLetters(int letters) =>
        Text($"{letters} letters stand before the figures: give one for the Irish grid, two for the British grid or the Channel Islands.");

    public static string NoBritishSquare(char first, char second) => Text($"{first}{second} is no 100 km square of the British grid: check the two letters.");

    public static string OddFigures(int figures) => Text($"{figures} {(figures == 1 ? "figure" : "figures")}: give an even number of figures, half for the easting and half for the northing.");

    public static string UnequalGroups(int first, int second) => Text($"The figures stand in groups of {first} and {second}: give the same number for the easting and the northing.");

    public static string ManyGroups(int groups) => Text($"The figures stand in {groups} groups: write them together, or as one group for the easting and one for the northing.");

    public static string NoQuadrant(char first, char second) => Text($"{first}{second} after the figures is no quadrant: NE, SE, SW and NW are.");

    public static string SuffixTooLong(int letters) => Text($"{letters} letters stand after the figures: give one tetrad letter, or NE, SE, SW or NW.");

    public static string SuffixNeedsTwoFigures(int suffix, int figures) => figures == 4 && suffix == 1
        ? "A letter after the four figures of a 1 km square is not read: leave it out, or give six figures for 100 m."
        : Text($"A {(suffix == 1 ? "tetrad letter" : "quadrant")} follows two figures, as in {(suffix == 1 ? "TQ38A" : "TQ38SE")}, not {figures}: leave the letters out or give two figures.");

    public static string SuffixNeedsFourFigures(int figures) =>
        Text($"A tetrad letter or quadrant follows four figures on a grid without letters, as in ITM7173A, not {figures}: leave the letters out or give four figures.");

    public static string OutsideGrid(INationalGrid grid, double easting, double northing) =>
        Text($"E {easting} N {northing} m lies outside the area of the {grid.Name}: check the figures and the grid.");

    public static string NotOfStatedGrid(INationalGrid found, INationalGrid stated) =>
        Text($"The reference is on the {found.Name}, but the {stated.Name} is stated: mend one of the two.");

    public static string NoCellSize(long metres) => Text($"The European grid has no cells of {metres} m here: give 100km, 10km, 5km, 2km, 1km, 100m, 10m or 1m.");

    public static string CellOutside(long easting, long northing) =>
        Text($"E {easting} N {northing} m lies outside the European grid: the short code leaves off the zeros of the size (10kmE342N321), the long code gives metres.");

    public static string CellOffGrid(long metres) => Text($"The corner of the cell is no multiple of {metres} m: check the size and the numbers.");

    public static IReadOnlyList<string> InWords(GridReferenceNotes notes)
    {
        var words = new List<string>();
        if (notes.HasFlag(GridReferenceNotes.ReadToOneMetre))
            words.Add("More than 10 figures were given: it was read to 1 m.");
        if (notes.HasFlag(GridReferenceNotes.LeadingILeftOut))
            words.Add("The I before the letter was left out: it was read on the Irish grid.");
        if (notes.HasFlag(GridReferenceNotes.ChannelIslandsDatumAssumed))
            words.Add("It was read on ED50, as nothing says WGS84: the two differ by about 240 m.");
        if (notes.HasFlag(GridReferenceNotes.MetresTakenAsWritten))
            words.Add("Eastings and northings in metres were read to 1 m: give a reference with fewer figures if the place is not known so well.");
        return words;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
