namespace RangeMap.Change;

/// <summary>
/// The intervals (q, p] on which alone an estimate from censored times can place mass: q is the start of some observation, p the end of some
/// observation, and no other start or end lies between them (Turnbull 1976; docs/methods/arrival-years.md, eq. 2).
/// </summary>
internal static class InnermostIntervals
{
    /// <summary>The intervals in order of time; they do not overlap.</summary>
    /// <param name="observed">At least one, each with its start before its end.</param>
    internal static CensoredYear[] Of(IReadOnlyCollection<CensoredYear> observed)
    {
        // At equal times an end comes before a start: (2000, 2002] and (2002, 2004] have no time in common.
        var ends = observed.Select(year => (Time: year.By, IsStart: false))
            .Concat(observed.Select(year => (Time: year.After, IsStart: true)))
            .Distinct().OrderBy(end => end.Time).ThenBy(end => end.IsStart).ToList();
        return [.. ends.Zip(ends.Skip(1)).Where(pair => pair.First.IsStart && !pair.Second.IsStart)
            .Select(pair => new CensoredYear(pair.First.Time, pair.Second.Time))];
    }

    /// <summary>For each observation the first innermost interval within it and the first one after it.</summary>
    internal static (int From, int To)[] Within(IReadOnlyList<CensoredYear> observed, CensoredYear[] innermost)
    {
        var starts = Array.ConvertAll(innermost, interval => interval.After);
        return [.. observed.Select(year => (FirstNotBefore(starts, year.After), FirstNotBefore(starts, year.By)))];
    }

    private static int FirstNotBefore(double[] ascending, double value)
    {
        int low = 0, high = ascending.Length;
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = ascending[middle] < value ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
