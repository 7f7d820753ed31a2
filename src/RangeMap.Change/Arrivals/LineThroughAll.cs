namespace RangeMap.Change;

/// <summary>
/// Asks whether a straight line of time on distance passes through every interval of arrival. Then the likelihood grows without end as the scatter
/// shrinks to 0, and no regression has a best line (docs/methods/arrival-years.md, eq. 6).
/// </summary>
internal static class LineThroughAll
{
    /// <summary>True where some line T = b0 + b1 d lies within all closed intervals [After, By].</summary>
    /// <remarks>
    /// A slope b1 leaves room for b0 where After(i) - b1 d(i) is nowhere above By(j) - b1 d(j): each pair of squares bounds b1 on one side. Of
    /// squares equally far only the latest start and the earliest end count.
    /// </remarks>
    internal static bool Exists(IEnumerable<(double Distance, CensoredYear Arrival)> squares)
    {
        var rings = squares.GroupBy(square => square.Distance)
            .Select(ring => (Distance: ring.Key, After: ring.Max(s => s.Arrival.After), By: ring.Min(s => s.Arrival.By)))
            .ToArray();
        double least = double.NegativeInfinity, greatest = double.PositiveInfinity;
        foreach (var start in rings.Where(ring => double.IsFinite(ring.After)))
        {
            foreach (var end in rings.Where(ring => double.IsFinite(ring.By)))
            {
                double apart = start.Distance - end.Distance, rise = start.After - end.By;
                if (apart > 0)
                    least = Math.Max(least, rise / apart);
                else if (apart < 0)
                    greatest = Math.Min(greatest, rise / apart);
                else if (rise > 0)
                    return false;
                if (least > greatest)
                    return false;
            }
        }

        return true;
    }
}
