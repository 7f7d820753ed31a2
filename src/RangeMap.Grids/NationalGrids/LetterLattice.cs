namespace RangeMap.Grids;

/// <summary>The 5 by 5 lattice of letters that the British and Irish grids share: A in the north-west, Z in the south-east, I left out.</summary>
internal static class LetterLattice
{
    private const string Letters = "ABCDEFGHJKLMNOPQRSTUVWXYZ";

    /// <summary>The column, 0 (west) to 4, and the row, 0 (south) to 4, of a capital letter; false for I and for anything else.</summary>
    public static bool TryFind(char letter, out int column, out int row)
    {
        var index = letter < 'I' ? letter - 'A' : letter - 'A' - 1;
        if (letter is < 'A' or > 'Z' or 'I')
        {
            column = row = 0;
            return false;
        }

        (row, column) = (4 - index / 5, index % 5);
        return true;
    }

    /// <summary>The letter at a column (0 to 4 from the west) and row (0 to 4 from the south).</summary>
    public static char At(int column, int row) => Letters[(4 - row) * 5 + column];
}
