using System.Runtime.InteropServices;
using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>Picks the notes of a few squares out of a log of millions: within a size of square the log is in order of eastings, so all but a strip of it is passed over.</summary>
public static class VisitsNear
{
    /// <summary>The part of a log whose own squares lie in the square or in one of the eight round it, with a few that reach over the rim.</summary>
    /// <param name="log">The log.</param>
    /// <param name="square">The middle square.</param>
    public static VisitLog Of(VisitLog log, Square square)
    {
        var side = square.SideMetres;
        var near = new List<VisitEntry>();
        foreach (var size in Enum.GetValues<SquareSize>().Where(size => (int)size <= side))
        {
            var west = Math.Max(0, square.Easting - side) / (int)size * (int)size;
            var from = FirstNotBefore(log.Entries, new Square(square.Grid, size, west, 0).Code);
            foreach (ref readonly var entry in log.Entries[from..])
            {
                var own = Square.FromCode(entry.SquareCode);
                if (own.Grid != square.Grid || own.Size != size || own.Easting >= square.Easting + 2 * side)
                    break;
                if (own.Northing >= square.Northing - side && own.Northing < square.Northing + 2 * side)
                    near.Add(entry);
            }
        }

        return VisitLog.Gather(CollectionsMarshal.AsSpan(near));
    }

    private static int FirstNotBefore(ReadOnlySpan<VisitEntry> sorted, long code)
    {
        int low = 0, high = sorted.Length;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (sorted[middle].SquareCode < code)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }
}
