namespace RangeMap.Maps;

/// <summary>The numbering of tiles in an archive: all tiles of one level after those of the level before, each level along a Hilbert curve (PMTiles specification 3, section 4.1).</summary>
public static class HilbertOrder
{
    /// <summary>The number of a tile.</summary>
    /// <param name="zoom">Level, 0 to 31.</param>
    /// <param name="column">Column, from the west.</param>
    /// <param name="row">Row, from the north.</param>
    public static ulong IdOf(int zoom, int column, int row)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan((uint)zoom, 31u);
        var before = ((1UL << (2 * zoom)) - 1) / 3;
        ulong along = 0;
        uint x = (uint)column, y = (uint)row;
        for (var side = 1u << zoom >> 1; side > 0; side >>= 1)
        {
            uint right = (x & side) > 0 ? 1u : 0, lower = (y & side) > 0 ? 1u : 0;
            along += (ulong)side * side * ((3 * right) ^ lower);
            (x, y) = Turned(side, x, y, right, lower);
        }

        return before + along;
    }

    /// <summary>A quarter of the curve is the whole curve turned.</summary>
    private static (uint X, uint Y) Turned(uint side, uint x, uint y, uint right, uint lower)
    {
        if (lower != 0)
            return (x, y);
        if (right == 1)
            (x, y) = (side - 1 - x, side - 1 - y);
        return (y, x);
    }
}
