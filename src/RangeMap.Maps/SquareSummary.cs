using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>What the drawn forms of a square say beyond its counts by period.</summary>
/// <param name="Records">Records summed over the periods.</param>
/// <param name="FirstPeriod">Index of the first period with records, from 0.</param>
/// <param name="LatestPeriod">Index of the last period with records.</param>
internal readonly record struct SquareSummary(long Records, int FirstPeriod, int LatestPeriod)
{
    /// <summary>Sums a square up; in a presence map every square has records in at least one period.</summary>
    public static SquareSummary Of(PresenceSquare square)
    {
        long records = 0;
        int first = -1, latest = 0;
        for (var i = 0; i < square.PerPeriod.Count; i++)
        {
            var count = square.PerPeriod[i].Records;
            if (count == 0)
                continue;
            records += count;
            latest = i;
            if (first < 0)
                first = i;
        }

        return new(records, Math.Max(first, 0), latest);
    }
}
