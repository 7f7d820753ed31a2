using System.Globalization;

namespace RangeMap.Records;

/// <summary>Names of cells such as B7: the column in letters, the row in figures.</summary>
internal static class CellName
{
    /// <summary>Columns that a sheet can have (XFD).</summary>
    public const int Columns = 16_384;

    /// <summary>Rows that a sheet can have.</summary>
    public const int Rows = 1_048_576;

    /// <summary>The column from 0 of a name such as B7; -1 if it has none that a sheet can have.</summary>
    public static int ColumnOf(ReadOnlySpan<char> name)
    {
        var column = 0;
        foreach (var c in name)
        {
            if (!char.IsAsciiLetter(c))
                break;
            column = column * 26 + (char.ToUpperInvariant(c) - 'A' + 1);
            if (column > Columns)
                return -1;
        }

        return column - 1;
    }

    /// <summary>The name of a cell.</summary>
    /// <param name="column">From 0.</param>
    /// <param name="row">From 1.</param>
    public static string Of(int column, long row)
    {
        var letters = "";
        for (var rest = column + 1; rest > 0; rest = (rest - 1) / 26)
            letters = (char)('A' + (rest - 1) % 26) + letters;
        return letters + row.ToString(CultureInfo.InvariantCulture);
    }
}
