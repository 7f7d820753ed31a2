namespace RangeMap.Change;

/// <summary>
/// The farthest square that the species holds at each time (docs/methods/spread.md, eq. 9): unlike the farthest square found so far it can fall, so a
/// retreat is seen. Outer squares count as lost from a time on where none of them was found any more, though they were visited often enough since.
/// </summary>
internal static class HeldBoundary
{
    // Six visits without a find make absence 95 % sure where two visits in five find the species (docs/methods/arrival-years.md, eq. 8).
    private const double LeastDetection = 0.4;

    private static readonly int _enoughVisits = (int)Math.Ceiling(ArrivalChances.VisitsForAbsence(LeastDetection));

    /// <summary>The farthest distance held at each time, km, from the first time at which a square is held.</summary>
    /// <param name="records">First records without jumps.</param>
    /// <param name="visited">Squares with their visits.</param>
    /// <param name="times">Ascending.</param>
    internal static (double[] Times, double[] Farthest) ByTime(FirstRecords records, IReadOnlyList<VisitedSquare> visited, IEnumerable<double> times)
    {
        var counted = records.Squares.Select(square => (square.DistanceKm, square.Bearing)).ToHashSet();
        var found = visited.Where(square => square.IsFound && counted.Contains((square.DistanceKm, square.Bearing)))
            .OrderByDescending(square => square.DistanceKm).ToArray();
        List<double> kept = [], farthest = [];
        foreach (var time in times)
        {
            if (FarthestHeld(found, time) is not { } held)
                continue;
            kept.Add(time);
            farthest.Add(held);
        }

        return ([.. kept], [.. farthest]);
    }

    /// <summary>Null before any square is reached; 0 where the species is lost everywhere.</summary>
    private static double? FarthestHeld(VisitedSquare[] farthestFirst, double time)
    {
        double? outermost = null;
        var visits = 0;
        foreach (var square in farthestFirst.Where(square => square.Arrival.By <= time))
        {
            outermost ??= square.DistanceKm;
            if (square.Arrival.By == time || (square.Finds.Length > 0 && square.Finds[^1] >= time))
                return visits >= _enoughVisits ? square.DistanceKm : outermost;
            visits += square.MissesFrom(time);
        }

        return visits >= _enoughVisits ? 0 : outermost;
    }
}
