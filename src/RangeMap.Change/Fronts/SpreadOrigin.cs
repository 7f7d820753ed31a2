namespace RangeMap.Change;

/// <summary>Where a spread began.</summary>
/// <param name="X">Kilometres east on the plane of the arrival points.</param>
/// <param name="Y">Kilometres north on the plane of the arrival points.</param>
public sealed record SpreadOrigin(double X, double Y)
{
    /// <summary>True when taken from the earliest squares, false when given.</summary>
    public bool Estimated { get; init; }

    /// <summary>Number of squares it was taken from; 0 when given.</summary>
    public int Squares { get; init; }

    /// <summary>Greatest distance, km, of one of those squares from their mean; large when the species began in several places.</summary>
    public double RadiusKm { get; init; }

    /// <summary>Kilometres to a place, and the bearing of it in radians clockwise from grid north in [0, 2 pi); null at the origin.</summary>
    internal (double Km, double? Bearing) To(double x, double y)
    {
        double east = x - X, north = y - Y;
        var bearing = Math.Atan2(east, north);
        return (Math.Sqrt(east * east + north * north), east == 0 && north == 0 ? null : bearing < 0 ? bearing + 2 * Math.PI : bearing);
    }

    /// <summary>
    /// The mean of the earliest squares: years are taken whole, from the first on, until they hold the wanted number.
    /// </summary>
    /// <param name="points">One per square, at least one, all finite.</param>
    /// <param name="squares">Wanted number, at least 1; all points are used when there are fewer.</param>
    public static SpreadOrigin FromEarliest(IReadOnlyList<ArrivalPoint> points, int squares)
    {
        var byTime = points.OrderBy(p => p.Time).ToList();
        var lastTime = byTime[Math.Min(squares, byTime.Count) - 1].Time;
        var cluster = byTime.TakeWhile(p => p.Time <= lastTime).ToList();
        double x = cluster.Average(p => p.X), y = cluster.Average(p => p.Y);
        return new(x, y)
        {
            Estimated = true,
            Squares = cluster.Count,
            RadiusKm = cluster.Max(p => Math.Sqrt((p.X - x) * (p.X - x) + (p.Y - y) * (p.Y - y))),
        };
    }
}
