using RangeMap.Records;

namespace RangeMap.Presence;

/// <summary>From a record to its cell of the cube.</summary>
public static class CubeFold
{
    /// <summary>
    /// The cell that a record adds, or false when it adds none: a statement of absence is no presence, and a
    /// rejected record never maps.
    /// </summary>
    public static bool TryCell(Record record, out CubeCell cell)
    {
        cell = default;
        if (!record.Present || record.Status == ReviewStatus.Rejected)
            return false;
        cell = new(record.Square.Code, record.Dates.First.DayNumber, record.Dates.Last.DayNumber, Count(record.Status, record.Doubts));
        return true;
    }

    /// <summary>
    /// How one present, unrejected record counts. Usable means confirmed, or unreviewed without a serious doubt.
    /// </summary>
    public static QualityCounts Count(ReviewStatus status, Doubts doubts)
    {
        var confirmed = status == ReviewStatus.Confirmed;
        var usable = confirmed || (status == ReviewStatus.Unreviewed && (doubts & SeriousDoubts.Mask) == 0);
        return new(1, usable ? 1 : 0, confirmed ? 1 : 0);
    }
}
