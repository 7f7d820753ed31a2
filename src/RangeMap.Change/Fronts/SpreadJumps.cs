namespace RangeMap.Change;

/// <summary>Tells jumps, and what spread from them, from the scatter of the front (docs/methods/spread.md, eq. 11).</summary>
/// <param name="Jumps">In order of time.</param>
/// <param name="Settled">First records without the jumps and what spread from them.</param>
internal sealed record SpreadJumps(IReadOnlyList<SpreadJump> Jumps, FirstRecords Settled)
{
    // Sides of a square to the nearest earlier one that a jump exceeds.
    private const double LeastGapSquares = 3;

    // The same in 99 % residuals: a fast front goes more than three squares a year, and then that is no gap.
    private const double LeastGapResiduals = 3;

    // Points of the standard normal curve below which 90, 95 and 99 % lie.
    private const double Z90 = 1.2815515655446004, Z95 = 1.6448536269514722, Z99 = 2.3263478740408408;

    /// <summary>Finds the jumps; none where only distances are known, or there are too few squares for a front.</summary>
    internal static SpreadJumps Of(FirstRecords records, SpreadOptions options)
    {
        if (records.Origin is null || records.TooFew(options.MinimumFrontSquares, options.MinimumFrontTimes, options.TimeUnit) is not null)
            return new([], records);

        var gap = LeastGapSquares * options.SquareSideKm;
        var main = MainColony(records, gap, options);
        var line = QuantileLine.Fit(main.Times, main.Distances, 0.95);
        var bound = Bound([.. main.Squares.Select(square => square.DistanceKm - line.Intercept - line.Slope * square.Time)]);
        return Of(records, square => square.DistanceKm - line.Intercept - line.Slope * square.Time, bound, Math.Max(gap, LeastGapResiduals * bound));
    }

    private static SpreadJumps Of(FirstRecords records, Func<FirstRecord, double> aheadOf, double bound, double gap)
    {
        var (ahead, roots) = (Array.ConvertAll(records.Squares, square => aheadOf(square)), new int[records.Count]);
        Array.Fill(roots, -1);
        for (var i = 0; i < records.Count; i++)
        {
            if (ahead[i] > bound)
                roots[i] = RootOf(records, i, roots, gap);
        }

        var jumps = roots.Where((root, i) => root == i).Select(i => new SpreadJump(
            Place(records, i).X, Place(records, i).Y, records.Times[i], ahead[i], NearestBefore(records, i), roots.Count(root => root == i)));
        return new([.. jumps], records.Without(Enumerable.Range(0, records.Count).Where(i => roots[i] >= 0).Select(i => Place(records, i))));
    }

    /// <summary>The square itself where no earlier one is near; the jump from which it spread where all that are near did; else -1.</summary>
    private static int RootOf(FirstRecords records, int square, int[] roots, double gap)
    {
        var root = square;
        for (var i = 0; i < square && records.Times[i] < records.Times[square]; i++)
        {
            if (PlanePoint.Km(Place(records, i), Place(records, square)) > gap)
                continue;
            if (roots[i] < 0)
                return -1;
            root = roots[i];
        }

        // Squares of the first time have none before them.
        return records.Times[square] > records.Times[0] ? root : -1;
    }

    /// <summary>
    /// The squares that are joined to the earliest ones by short steps. The line that tells jumps is laid through these, because a colony founded by
    /// a jump would turn a line through all; where these are less than half, as under thin recording, through all after all.
    /// </summary>
    private static FirstRecords MainColony(FirstRecords records, double gap, SpreadOptions options)
    {
        var seedsUntil = records.Times[Math.Min(options.OriginSquares, records.Count) - 1];
        List<PlanePoint> joined = [], apart = [];
        foreach (var square in records.Squares)
        {
            var place = square.Place!.Value;
            // The latest are looked at first: a square mostly has its neighbour among them.
            var isJoined = square.Time <= seedsUntil || joined.FindLastIndex(other => PlanePoint.Km(other, place) <= gap) >= 0;
            (isJoined ? joined : apart).Add(place);
        }

        var main = records.Without(apart);
        return 2 * main.Count < records.Count || main.TooFew(options.MinimumSquares, options.MinimumTimes, options.TimeUnit) is not null ? records : main;
    }

    /// <summary>
    /// The 99 % residual. It is drawn out on a normal curve from the 90 and 95 % residuals, because jumps themselves would lift the 99 % one and so
    /// hide each other as soon as they are more than one square in a hundred.
    /// </summary>
    private static double Bound(double[] residuals)
    {
        Array.Sort(residuals);
        double r90 = SortedQuantile.Of(residuals, 0.90), r95 = SortedQuantile.Of(residuals, 0.95);
        return r95 + (r95 - r90) * (Z99 - Z95) / (Z95 - Z90);
    }

    private static double NearestBefore(FirstRecords records, int square) => records.Squares.TakeWhile(other => other.Time < records.Times[square])
        .Min(other => PlanePoint.Km(other.Place!.Value, Place(records, square)));

    private static PlanePoint Place(FirstRecords records, int square) => records.Squares[square].Place!.Value;
}
