using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>
/// Makes places of sensitive taxa coarser than they are known, before anything is computed from them: what was never
/// there cannot leak from a map, a count or a sum.
/// </summary>
public static class Generalisation
{
    /// <summary>A cube in which no square is finer than the size given. A square that fits in none of that size goes to the next coarser that holds it.</summary>
    public static TaxonCube Generalise(TaxonCube cube, SquareSize finest)
    {
        var cells = cube.Cells.ToArray();
        foreach (ref var cell in cells.AsSpan())
            cell = cell with { SquareCode = Generalise(Square.FromCode(cell.SquareCode), finest).Code };
        return TaxonCube.Gather(cells.AsSpan());
    }

    /// <summary>A visit log in which the notes of sensitive taxa stand at generalised squares, so that effort does not tell where they were.</summary>
    /// <param name="log">The visits.</param>
    /// <param name="finestOf">The finest square shown for a taxon number; null for a taxon that is not sensitive.</param>
    public static VisitLog Generalise(VisitLog log, Func<int, SquareSize?> finestOf)
    {
        var entries = log.Entries.ToArray();
        foreach (ref var entry in entries.AsSpan())
        {
            if (finestOf(entry.TaxonNumber) is { } finest)
                entry = entry with { SquareCode = Generalise(Square.FromCode(entry.SquareCode), finest).Code };
        }

        return VisitLog.Gather(entries);
    }

    /// <summary>The square that may be shown for one that is known.</summary>
    public static Square Generalise(Square square, SquareSize finest)
    {
        if (square.SideMetres >= (int)finest)
            return square;
        ReadOnlySpan<SquareSize> coarser = [finest, SquareSize.Km10, SquareSize.Km100];
        foreach (var size in coarser)
        {
            if ((int)size >= (int)finest && square.TryCoarsen(size, out var container))
                return container;
        }

        throw new InvalidOperationException($"The square {square.Code} lies in no 100 km square.");
    }
}
