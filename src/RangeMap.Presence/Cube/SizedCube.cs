using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>
/// A taxon's cube rolled up to one square size, ordered by square, so that a presence map for any periods is one pass
/// over arrays. Made once per taxon and size, asked many times.
/// </summary>
public sealed class SizedCube
{
    private SizedCube(SquareSize size, CubeCell[] cells, QualityCounts tooCoarse)
    {
        Size = size;
        Cells = cells;
        TooCoarse = tooCoarse;
    }

    /// <summary>The side of the squares.</summary>
    public SquareSize Size { get; }

    /// <summary>The cells, ascending; their square codes are of <see cref="Size"/>.</summary>
    internal CubeCell[] Cells { get; }

    /// <summary>Records whose own square lies wholly in no square of this size.</summary>
    public QualityCounts TooCoarse { get; }

    /// <summary>Number of cells.</summary>
    public int Count => Cells.Length;

    /// <summary>The cells of one square, by day; empty where the taxon has none or the square is of another size.</summary>
    public ReadOnlySpan<CubeCell> In(Square square)
    {
        var start = FirstNotBefore(square.Code);
        return Cells.AsSpan(start, FirstNotBefore(square.Code + 1) - start);
    }

    /// <summary>Rolls a cube up. A record counts for a square only if its own square lies wholly inside.</summary>
    /// <param name="cube">The cube.</param>
    /// <param name="size">Side of the squares.</param>
    /// <param name="wanted">Which squares are wanted, of records too coarse for the size their own; null for all.</param>
    public static SizedCube Of(TaxonCube cube, SquareSize size, Func<Square, bool>? wanted = null)
    {
        var cells = new CubeCell[cube.Cells.Length];
        var count = 0;
        QualityCounts tooCoarse = default;
        foreach (ref readonly var cell in cube.Cells)
        {
            var own = Square.FromCode(cell.SquareCode);
            var fits = own.TryCoarsen(size, out var container);
            if (wanted?.Invoke(fits ? container : own) == false)
                continue;
            if (fits)
                cells[count++] = cell with { SquareCode = container.Code };
            else
                tooCoarse += cell.Counts;
        }

        return new(size, TaxonCube.Gather(cells.AsSpan(0, count)).Cells.ToArray(), tooCoarse);
    }

    private int FirstNotBefore(long code)
    {
        int low = 0, high = Cells.Length;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (Cells[middle].SquareCode < code)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }
}
