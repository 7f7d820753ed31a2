using System.Globalization;

namespace RangeMap.Grids;

/// <summary>Some of the hundred 1 km squares of a 10 km square: a bit each, the lowest for the south-western, then eastwards and row by row northwards.</summary>
internal readonly record struct MonadSet(UInt128 Bits)
{
    private const int ASide = 10, Side = (int)SquareSize.Km1;
    private static readonly UInt128 All = (UInt128.One << (ASide * ASide)) - 1;

    /// <summary>Reads a hexadecimal number or "all".</summary>
    /// <exception cref="FormatException">It is neither.</exception>
    /// <exception cref="OverflowException">The number has more than 100 bits.</exception>
    public static MonadSet Parse(string text)
    {
        var bits = text == "all" ? All : UInt128.Parse(text, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
        return bits <= All ? new(bits) : throw new OverflowException("A 10 km square has a hundred squares of 1 km.");
    }

    /// <summary>True when one of the 1 km squares lies in the square, which lies in the 10 km square.</summary>
    public bool Touches(Square hectad, Square square)
    {
        int column = (square.Easting - hectad.Easting) / Side, row = (square.Northing - hectad.Northing) / Side, width = square.SideMetres / Side;
        for (var k = 0; k < width * width; k++)
        {
            if (Has(column + k % width, row + k / width))
                return true;
        }

        return false;
    }

    /// <summary>The squares of 10, 5, 2 or 1 km in the 10 km square that hold one of the 1 km squares.</summary>
    public IEnumerable<Square> Squares(Square hectad, SquareSize size)
    {
        for (var east = 0; east < (int)SquareSize.Km10; east += (int)size)
        {
            for (var north = 0; north < (int)SquareSize.Km10; north += (int)size)
            {
                var square = new Square(hectad.Grid, size, hectad.Easting + east, hectad.Northing + north);
                if (Touches(hectad, square))
                    yield return square;
            }
        }
    }

    private bool Has(int column, int row) => (Bits >> (row * ASide + column) & UInt128.One) == UInt128.One;
}
