namespace RangeMap.Change;

/// <summary>A square with all its visits, seen from the origin.</summary>
/// <param name="DistanceKm">Distance from the origin, km.</param>
/// <param name="Bearing">Radians clockwise from grid north; null at the origin.</param>
/// <param name="Arrival">When the species arrived, from the visits and the first record together.</param>
/// <param name="Finds">Times of the visits that found it, ascending.</param>
/// <param name="Misses">Times of the visits that did not, ascending.</param>
internal sealed record VisitedSquare(double DistanceKm, double? Bearing, CensoredYear Arrival, double[] Finds, double[] Misses)
{
    /// <summary>True where it was found, on a visit or by another record.</summary>
    public bool IsFound => double.IsFinite(Arrival.By);

    /// <summary>Number of visits at a time or later that did not find it.</summary>
    public int MissesFrom(double time)
    {
        var at = Array.FindIndex(Misses, miss => miss >= time);
        return at < 0 ? 0 : Misses.Length - at;
    }
}

/// <summary>Squares with their visits, for the estimators that need to know where nothing was found.</summary>
internal static class VisitedSquares
{
    /// <summary>One entry a square that was visited, or found without a dated visit, the nearest first; none where first records are unsound or have no places.</summary>
    /// <param name="records">First records; each counts as a find besides the visits.</param>
    /// <param name="visits">Visits that could have found the species; those that are no numbers are passed over.</param>
    internal static IReadOnlyList<VisitedSquare> Of(FirstRecords records, IReadOnlyList<SquareVisit> visits)
    {
        if (records.Fault is not null || records.Origin is not { } origin)
            return [];
        var first = records.Squares.ToDictionary(square => (square.Place!.Value.X, square.Place.Value.Y), square => square.Time);
        var visited = visits.Where(visit => double.IsFinite(visit.X) && double.IsFinite(visit.Y) && double.IsFinite(visit.Time)).ToLookup(visit => (visit.X, visit.Y));
        return [.. visited.Select(square => square.Key).Union(first.Keys).Select(place => Of(origin, place, visited[place], first.TryGetValue(place, out var time) ? time : null))
            .OrderBy(square => square.DistanceKm)];
    }

    private static VisitedSquare Of(SpreadOrigin origin, (double X, double Y) place, IEnumerable<SquareVisit> visits, double? first)
    {
        List<double> finds = [], misses = [];
        foreach (var visit in visits)
            (visit.Found ? finds : misses).Add(visit.Time);
        finds.Sort();
        misses.Sort();
        var by = Math.Min(first ?? double.PositiveInfinity, finds.Count > 0 ? finds[0] : double.PositiveInfinity);
        var last = misses.FindLastIndex(miss => miss < by);
        var (distance, bearing) = origin.To(place.X, place.Y);
        return new(distance, bearing, new(last < 0 ? double.NegativeInfinity : misses[last], by), [.. finds], [.. misses]);
    }
}
