namespace RangeMap.Change;

/// <summary>
/// Lists of the shared visits in cells of one year and one length, before any taxon is looked at: a list counts at its whole length.
/// Looking at a taxon moves the lists that hold it to a cell one shorter, since the length is counted without it.
/// </summary>
internal sealed class ListCells
{
    private readonly int[] _years;
    private readonly int[] _cells;
    private readonly int _least;

    internal ListCells(SharedVisits visits, int leastOthers)
    {
        (Visits, _least) = (visits, leastOthers);
        var all = visits.All;
        _years = [.. all.ToArray().Select(visit => visit.Year).Distinct().Order()];
        Lengths = Math.Max(1, all.Length == 0 ? 0 : all.ToArray().Max(visit => visit.Length));
        Middle = _years.Length == 0 ? 0 : (_years[0] + _years[^1]) / 2.0;
        Lists = new int[_years.Length * Lengths];
        _cells = new int[all.Length];
        for (var i = 0; i < all.Length; i++)
        {
            _cells[i] = all[i].Length < _least ? -1 : Array.BinarySearch(_years, all[i].Year) * Lengths + all[i].Length - 1;
            if (_cells[i] >= 0)
                Lists[_cells[i]]++;
        }
    }

    internal SharedVisits Visits { get; }

    /// <summary>The greatest length.</summary>
    internal int Lengths { get; }

    /// <summary>Number of different years.</summary>
    internal int Years => _years.Length;

    /// <summary>The year from which decades are counted, in the middle of all.</summary>
    internal double Middle { get; }

    /// <summary>Number of lists in each cell: year after year, lengths from 1 on.</summary>
    internal int[] Lists { get; }

    /// <summary>The cell of a visit at its whole length; -1 where that is too short.</summary>
    internal int CellOf(int visit) => _cells[visit];

    /// <summary>The cell one taxon shorter; -1 where that is too short.</summary>
    internal int Shorter(int cell) => cell < 0 || cell % Lengths < _least ? -1 : cell - 1;

    /// <summary>Decades from <see cref="Middle"/>.</summary>
    internal double Decades(int cell) => (_years[cell / Lengths] - Middle) / 10;

    /// <summary>ln of the length.</summary>
    internal double LogLength(int cell) => Math.Log(cell % Lengths + 1);
}
