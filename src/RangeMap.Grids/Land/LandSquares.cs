using System.Globalization;

namespace RangeMap.Grids;

/// <summary>The squares of each national grid that land touches, from 10 km to 1 km, as counted on the full-detail coast.</summary>
/// <remarks>
/// Held as the 1 km squares, 100 bits for each 10 km square; a square of 2 or 5 km is touched by land where one of its 1 km squares is.
/// A species can live where this list has no land: use it to count and to suggest, never to refuse a record.
/// </remarks>
public sealed class LandSquares
{
    private const int Columns = 7;
    private readonly Dictionary<Square, (double Share, MonadSet Monads)> _hectads = [];

    private LandSquares()
    {
    }

    /// <summary>Reads a table with the columns grid, square, easting, northing, land (per cent), source and monads (hexadecimal, or "all"), in this order, under a line of headers.</summary>
    /// <exception cref="FormatException">A row has other columns, no numbers or a corner of no 10 km square.</exception>
    public static LandSquares Read(TextReader table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var read = new LandSquares();
        table.ReadLine();
        while (table.ReadLine() is { } line)
            read.Add(line);
        return read;
    }

    /// <summary>The squares of a grid and size that land touches, in the order of their codes.</summary>
    /// <param name="grid">British, Irish or Channel Islands (ED50); others have no squares here.</param>
    /// <param name="size">10, 5, 2 or 1 km.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is another.</exception>
    public IReadOnlyList<Square> Of(GridId grid, SquareSize size)
    {
        CheckSize(size);
        var own = _hectads.Where(hectad => hectad.Key.Grid == grid);
        var squares = own.SelectMany(hectad => hectad.Value.Monads.Squares(hectad.Key, size)).ToList();
        squares.Sort();
        return squares;
    }

    /// <summary>True when land touches the square.</summary>
    /// <param name="square">Of 10, 5, 2 or 1 km.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is another.</exception>
    public bool Has(Square square)
    {
        CheckSize(square.Size);
        return square.TryCoarsen(SquareSize.Km10, out var hectad) && _hectads.TryGetValue(hectad, out var land) && land.Monads.Touches(hectad, square);
    }

    /// <summary>The part of a 10 km square that is land, 0 to 1; lakes count as land. 0 for squares without land.</summary>
    public double ShareOf(Square hectad) => _hectads.TryGetValue(hectad, out var land) ? land.Share : 0;

    private static void CheckSize(SquareSize size)
    {
        if (size is not (SquareSize.Km1 or SquareSize.Km2 or SquareSize.Km5 or SquareSize.Km10))
            throw new ArgumentOutOfRangeException(nameof(size), size, "Squares with land are listed for 1, 2, 5 and 10 km.");
    }

    private void Add(string line)
    {
        var fields = line.Split(',');
        try
        {
            if (fields.Length != Columns || NationalGrid.Find(fields[0]) is not { } grid)
                throw new FormatException();
            var square = new Square(grid.Id, SquareSize.Km10, int.Parse(fields[2], CultureInfo.InvariantCulture), int.Parse(fields[3], CultureInfo.InvariantCulture));
            _hectads[square] = (double.Parse(fields[4], CultureInfo.InvariantCulture) / 100, MonadSet.Parse(fields[6]));
        }
        catch (Exception fault) when (fault is FormatException or OverflowException or ArgumentOutOfRangeException)
        {
            throw new FormatException($"This is no row of land squares: {line}", fault);
        }
    }
}
