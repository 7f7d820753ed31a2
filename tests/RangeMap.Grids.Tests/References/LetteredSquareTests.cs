namespace RangeMap.Grids.Tests;

public sealed class LetteredSquareTests
{
    /// <summary>The 100 km squares of the British grid as they lie on the map, north at the top, sea included.</summary>
    private static readonly string[] British =
    [
        "HL HM HN HO HP JL JM", "HQ HR HS HT HU JQ JR", "HV HW HX HY HZ JV JW", "NA NB NC ND NE OA OB", "NF NG NH NJ NK OF OG",
        "NL NM NN NO NP OL OM", "NQ NR NS NT NU OQ OR", "NV NW NX NY NZ OV OW", "SA SB SC SD SE TA TB", "SF SG SH SJ SK TF TG",
        "SL SM SN SO SP TL TM", "SQ SR SS ST SU TQ TR", "SV SW SX SY SZ TV TW",
    ];

    private static readonly string[] Irish = ["A B C D E", "F G H J K", "L M N O P", "Q R S T U", "V W X Y Z"];

    [Fact]
    public void EveryBritishSquareLiesWhereTheMapShowsItAndNoOtherPairIsOne() => CheckDrawing(British, GridId.British, 2);

    [Fact]
    public void EveryIrishSquareLiesWhereTheMapShowsItAndNoOtherLetterIsOne() => CheckDrawing(Irish, GridId.Irish, 1);

    private static void CheckDrawing(string[] drawing, GridId id, int length)
    {
        var expected = new Dictionary<string, Square>();
        for (var row = 0; row < drawing.Length; row++)
        {
            var letters = drawing[row].Split(' ');
            for (var column = 0; column < letters.Length; column++)
                expected[letters[column]] = new(id, SquareSize.Km100, 100_000 * column, 100_000 * (drawing.Length - 1 - row));
        }

        foreach (var text in AllTexts(length))
        {
            var read = GridReference.TryParse(text, default, out var square, out _) && square.Grid == id;
            Assert.Equal(expected.ContainsKey(text), read);
            if (!read)
                continue;
            Assert.Equal(expected[text], square);
            Assert.Equal(text, NationalGrid.Get(id).Letters(square.Centre));
        }
    }

    /// <summary>All texts of one or two letters; I before an Irish letter is another test's matter.</summary>
    private static IEnumerable<string> AllTexts(int length) =>
        from first in Enumerable.Range('A', 26)
        from second in length == 1 ? [0] : Enumerable.Range('A', 26)
        where length == 1 || first != 'I'
        select length == 1 ? $"{(char)first}" : $"{(char)first}{(char)second}";
}
