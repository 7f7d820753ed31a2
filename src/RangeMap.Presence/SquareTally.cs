using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>Counts the cells of one square into the periods.</summary>
internal struct SquareTally(int periods)
{
    private readonly PeriodCount[] _perPeriod = new PeriodCount[periods];
    private int _earliestCertainDay = int.MaxValue;
    private int _latestCertainDay = int.MinValue;

    public bool Any { get; private set; }

    /// <summary>Adds the cell to each period that contains it; false when none does.</summary>
    public bool TryCount(in CubeCell cell, int records, ReadOnlySpan<Period> periods)
    {
        var inside = false;
        for (var i = 0; i < periods.Length; i++)
        {
            if (!periods[i].Contains(cell.FirstDay, cell.LastDay))
                continue;
            inside = true;
            ref var count = ref _perPeriod[i];
            // FirstYear and LastYear hold day numbers until ToSquare turns them into years: a division a cell is dear.
            var (first, last) = count.Records == 0 ? (cell.LastDay, cell.FirstDay) : (Math.Min(count.FirstYear, cell.LastDay), Math.Max(count.LastYear, cell.FirstDay));
            count = new(count.Records + records, count.Confirmed + cell.Counts.Confirmed, 0, first, last);
        }

        if (inside)
        {
            Any = true;
            // The taxon was certainly there by the end of the earliest range, and still at the start of the latest.
            _earliestCertainDay = Math.Min(_earliestCertainDay, cell.LastDay);
            _latestCertainDay = Math.Max(_latestCertainDay, cell.FirstDay);
        }

        return inside;
    }

    public readonly PresenceSquare ToSquare(Square square, ReadOnlySpan<Period> periods, Effort? effort)
    {
        for (var i = 0; i < _perPeriod.Length; i++)
        {
            ref var count = ref _perPeriod[i];
            count = count with
            {
                Visits = effort?.Visits(square, periods[i]) ?? 0,
                FirstYear = count.Records == 0 ? 0 : Year(count.FirstYear),
                LastYear = count.Records == 0 ? 0 : Year(count.LastYear),
            };
        }

        return new(square, Year(_earliestCertainDay), Year(_latestCertainDay), _perPeriod);
    }

    private static int Year(int dayNumber) => DateOnly.FromDayNumber(dayNumber).Year;
}
