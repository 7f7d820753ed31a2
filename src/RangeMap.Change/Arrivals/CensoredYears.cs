namespace RangeMap.Change;

/// <summary>A square with the interval in which the species arrived there.</summary>
/// <param name="X">Kilometres east of its centre.</param>
/// <param name="Y">Kilometres north of its centre.</param>
/// <param name="Arrival">The interval.</param>
public readonly record struct CensoredSquare(double X, double Y, CensoredYear Arrival);

/// <summary>Turns visits with and without a species into an interval of arrival for each square (docs/methods/arrival-years.md, eq. 1).</summary>
public static class CensoredYears
{
    /// <summary>One interval a square, in the order in which the squares first occur.</summary>
    /// <param name="visits">All visits that could have found the species, in any order. Squares are told apart by their centres.</param>
    public static IReadOnlyList<CensoredSquare> Of(IEnumerable<SquareVisit> visits) =>
        [.. visits.GroupBy(visit => (visit.X, visit.Y)).Select(square => new CensoredSquare(square.Key.X, square.Key.Y, OfSquare(square.Select(visit => (visit.Time, visit.Found)).ToList())))];

    /// <summary>The interval of one square.</summary>
    /// <param name="visits">Times of its visits, and whether each found the species; at least one.</param>
    /// <remarks>A visit that found nothing at the time of the first find, or after it, says nothing of the arrival.</remarks>
    public static CensoredYear OfSquare(IReadOnlyCollection<(double Time, bool Found)> visits)
    {
        if (visits.Count == 0)
            throw new ArgumentException("A square without visits has no interval of arrival.", nameof(visits));
        double by = double.PositiveInfinity, after = double.NegativeInfinity;
        foreach (var (time, found) in visits)
        {
            if (found)
                by = Math.Min(by, time);
        }

        foreach (var (time, found) in visits)
        {
            if (!found && time < by)
                after = Math.Max(after, time);
        }

        return new(after, by);
    }
}
