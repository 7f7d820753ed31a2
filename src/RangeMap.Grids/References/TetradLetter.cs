namespace RangeMap.Grids;

/// <summary>The letters of the 25 tetrads (2 km squares) in a 10 km square: A to Z without O, from the south-west corner up each column.</summary>
internal static class TetradLetter
{
    private static readonly string[] Letters = [.. "ABCDEFGHIJKLMNPQRSTUVWXYZ".Select(letter => letter.ToString())];

    /// <summary>The offset of a tetrad's corner from that of its 10 km square, metres; false for O and for anything but a capital letter.</summary>
    public static bool TryFind(char letter, out int east, out int north)
    {
        var index = letter < 'O' ? letter - 'A' : letter - 'A' - 1;
        (east, north) = (index / 5 * 2000, index % 5 * 2000);
        return letter is >= 'A' and <= 'Z' and not 'O';
    }

    /// <summary>The letter of the tetrad at an offset (0 to 9,999 m each way) in its 10 km square.</summary>
    public static string At(int east, int north) => Letters[east / 2000 * 5 + north / 2000];
}
