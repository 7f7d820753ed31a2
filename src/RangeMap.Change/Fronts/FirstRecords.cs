namespace RangeMap.Change;

/// <summary>One row of the table that all estimators share.</summary>
/// <param name="Time">Year of the first record.</param>
/// <param name="DistanceKm">Distance from the origin, km.</param>
/// <param name="Bearing">Radians clockwise from grid north in [0, 2 pi); null at the origin, or where only distances are known.</param>
/// <param name="Place">Centre of the square; null where only distances are known.</param>
internal readonly record struct FirstRecord(double Time, double DistanceKm, double? Bearing, PlanePoint? Place);

/// <summary>First records by square, seen from the origin, in order of time and then of distance.</summary>
internal sealed class FirstRecords
{
    private FirstRecords(IEnumerable<FirstRecord> squares, SpreadOrigin? origin, string? fault)
    {
        Squares = [.. squares.OrderBy(s => s.Time).ThenBy(s => s.DistanceKm)];
        (Origin, Fault) = (origin, fault);
        Times = Array.ConvertAll(Squares, s => s.Time);
        Distances = Array.ConvertAll(Squares, s => s.DistanceKm);
        DistinctTimes = Times.Distinct().Count();
    }

    /// <summary>The rows.</summary>
    internal FirstRecord[] Squares { get; }

    /// <summary>Times of the rows, ascending.</summary>
    internal double[] Times { get; }

    /// <summary>Distances of the rows, km.</summary>
    internal double[] Distances { get; }

    /// <summary>Where distances are measured from; null where only distances are known or there is no row.</summary>
    public SpreadOrigin? Origin { get; }

    /// <summary>Why nothing can be computed from the rows; null when they are sound.</summary>
    public string? Fault { get; }

    /// <summary>Number of squares.</summary>
    public int Count => Squares.Length;

    /// <summary>Number of different times.</summary>
    public int DistinctTimes { get; }

    /// <summary>Earliest time; null without rows.</summary>
    public double? FirstTime => Count > 0 ? Times[0] : null;

    /// <summary>Latest time; null without rows.</summary>
    public double? LastTime => Count > 0 ? Times[^1] : null;

    /// <summary>From the places of the squares. A place given twice counts once, at its earliest time.</summary>
    public static FirstRecords FromPoints(IEnumerable<ArrivalPoint> points, SpreadOptions options)
    {
        var all = points.ToList();
        var unsound = all.Count(p => !double.IsFinite(p.X) || !double.IsFinite(p.Y) || !double.IsFinite(p.Time));
        if (unsound > 0)
            return new([], null, SpreadWords.NotNumbers(unsound, all.Count));

        var squares = all.GroupBy(p => (p.X, p.Y)).Select(g => g.MinBy(p => p.Time)).ToList();
        if (squares.Count == 0)
            return new([], null, SpreadWords.NoSquares);

        var origin = options.Origin ?? SpreadOrigin.FromEarliest(squares, options.OriginSquares);
        return new(squares.Select(p => From(origin, p)), origin, PresentFromStart(squares, options));
    }

    /// <summary>
    /// Why a species that was widespread when recording began has no arrival to measure; null for any other. Its first
    /// records spread as recorders do.
    /// </summary>
    private static string? PresentFromStart(List<ArrivalPoint> squares, SpreadOptions options)
    {
        if (options.RecordedFrom is not { } start)
            return null;
        var early = squares.Where(p => p.Time < start + SpreadOptions.StartSpan).ToList();
        if (early.Count < options.OriginSquares)
            return null;
        var cluster = SpreadOrigin.FromEarliest(early, early.Count);
        return cluster.RadiusKm > SpreadOptions.WidespreadSquares * options.SquareSideKm
            ? SpreadWords.PresentFromStart(early.Count, 2 * cluster.RadiusKm, start)
            : null;
    }

    /// <summary>From distances, one row per square.</summary>
    public static FirstRecords FromDistances(IEnumerable<ArrivalDistance> distances)
    {
        var all = distances.ToList();
        var unsound = all.Count(d => !double.IsFinite(d.DistanceKm) || !double.IsFinite(d.Time) || d.DistanceKm < 0);
        if (unsound > 0)
            return new([], null, SpreadWords.NotNumbers(unsound, all.Count));
        return new(all.Select(d => new FirstRecord(d.Time, d.DistanceKm, null, null)), null, all.Count == 0 ? SpreadWords.NoSquares : null);
    }

    /// <summary>The same without the squares at some places.</summary>
    internal FirstRecords Without(IEnumerable<PlanePoint> places)
    {
        var left = places.ToHashSet();
        return left.Count == 0 ? this : new(Squares.Where(square => square.Place is not { } place || !left.Contains(place)), Origin, Fault);
    }

    /// <summary>Why these records cannot carry an estimator with such minima; null when they can.</summary>
    internal string? TooFew(int squares, int times, string unit) =>
        Fault
        ?? (Count < squares ? SpreadWords.NotEnoughSquares(Count, squares)
            : DistinctTimes < times ? SpreadWords.NotEnoughTimes(DistinctTimes, times, unit)
            : null);

    private static FirstRecord From(SpreadOrigin origin, ArrivalPoint point)
    {
        var (distance, bearing) = origin.To(point.X, point.Y);
        return new(point.Time, distance, bearing, new(point.X, point.Y));
    }
}
