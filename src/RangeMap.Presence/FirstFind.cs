using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>The first find of a taxon in a square: of all its records there the one by whose last possible day the taxon was certainly there earliest.</summary>
/// <param name="Square">The square.</param>
/// <param name="FirstDay">First possible day of that record, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="LastDay">Last possible day.</param>
public readonly record struct FirstFind(Square Square, int FirstDay, int LastDay)
{
    /// <summary>The first find in every square of a taxon, ascending by square.</summary>
    /// <param name="cube">The taxon's cube at the size asked.</param>
    /// <param name="quality">Which records count.</param>
    public static IReadOnlyList<FirstFind> Of(SizedCube cube, Quality quality)
    {
        var finds = new List<FirstFind>();
        foreach (ref readonly var cell in cube.Cells.AsSpan())
        {
            if (cell.Counts.At(quality) == 0)
                continue;
            var found = new FirstFind(Square.FromCode(cell.SquareCode), cell.FirstDay, cell.LastDay);
            if (finds.Count == 0 || finds[^1].Square != found.Square)
                finds.Add(found);
            else if ((found.LastDay, found.FirstDay).CompareTo((finds[^1].LastDay, finds[^1].FirstDay)) < 0)
                finds[^1] = found;
        }

        return finds;
    }
}
