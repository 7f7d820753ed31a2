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

    public static IReadOnlyList<string> InWords(GridReferenceNotes notes)
    {
        var words = new List<string>();
        if (notes.HasFlag(GridReferenceNotes.ReadToOneMetre))
            words.Add("More than 10 figures were given: it was read to 1 m.");
        if (notes.HasFlag(GridReferenceNotes.LeadingILeftOut))
            words.Add("The I before the letter was left out: it was read on the Irish grid.");
        if (notes.HasFlag(GridReferenceNotes.ChannelIslandsDatumAssumed))
            words.Add("It was read on ED50, as nothing says WGS84: the two differ by about 240 m.");
        return words;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
