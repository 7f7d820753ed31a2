namespace RangeMap.Grids;

/// <summary>A block of tiles of one level, first and last inside; empty when a last lies before its first.</summary>
/// <param name="Zoom">The level.</param>
/// <param name="FirstColumn">The westernmost column.</param>
/// <param name="LastColumn">The easternmost column.</param>
/// <param name="FirstRow">The northernmost row.</param>
/// <param name="LastRow">The southernmost row.</param>
public readonly record struct TileRange(int Zoom, int FirstColumn, int LastColumn, int FirstRow, int LastRow)
{
    /// <summary>How many tiles.</summary>
    public long Count => Math.Max(0L, LastColumn - FirstColumn + 1) * Math.Max(0L, LastRow - FirstRow + 1);

    /// <summary>Each tile, row by row from the north-west.</summary>
    public IEnumerable<(int Column, int Row)> Tiles()
    {
        for (var row = FirstRow; row <= LastRow; row++)
        {
            for (var column = FirstColumn; column <= LastColumn; column++)
                yield return (column, row);
        }
    }
}
