using RangeMap.Grids;

namespace RangeMap.TestKit;

/// <summary>Squares from a picture: a letter, digit or # is an occupied square, a dot an empty one; the last line is the southernmost.</summary>
public static class Drawing
{
    /// <summary>The occupied squares of a picture whose south-west square is given.</summary>
    /// <param name="picture">Lines of equal length.</param>
    /// <param name="southWest">The square of the lower left character.</param>
    public static IEnumerable<(Square Square, char Mark)> Squares(string picture, Square southWest)
    {
        var lines = picture.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        for (var row = 0; row < lines.Length; row++)
        {
            for (var column = 0; column < lines[row].Length; column++)
            {
                if (lines[row][column] != '.')
                    yield return (Shift(southWest, column, lines.Length - 1 - row), lines[row][column]);
            }
        }
    }

    private static Square Shift(Square from, int columns, int rows) =>
        new(from.Grid, from.Size, from.Easting + columns * from.SideMetres, from.Northing + rows * from.SideMetres);
}
