using System.Globalization;

namespace RangeMap.Records;

/// <summary>How many cells have some fault, and which was the first.</summary>
internal sealed class CellTally
{
    private string _first = "";

    /// <summary>The number of cells.</summary>
    public long Count { get; private set; }

    /// <summary>Counts a cell: its column from 0, its row from 1.</summary>
    public void Add(int column, long row)
    {
        if (Count++ == 0)
            _first = CellName.Of(column, row);
    }

    /// <summary>Such as "3 cells, the first is B7".</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Count:N0} {(Count == 1 ? "cell" : "cells, the first is")} {_first}");
}
