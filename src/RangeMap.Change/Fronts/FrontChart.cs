namespace RangeMap.Change;

/// <summary>What a chart of the advance draws: each square's distance from the origin, and the front line through them.</summary>
/// <param name="DistancesKm">Distance of each point from the origin, km, in the order of the points.</param>
/// <param name="Line">The line of the front; null where the report gives no front speed.</param>
public sealed record FrontChart(IReadOnlyList<double> DistancesKm, FrontLine? Line)
{
    /// <summary>The chart that belongs to a report.</summary>
    /// <param name="points">The points that the report was measured from, all finite.</param>
    /// <param name="report">The report.</param>
    public static FrontChart Of(IReadOnlyList<ArrivalPoint> points, SpreadReport report)
    {
        if (report.Origin is not { } origin)
            return new([], null);
        var distances = points.Select(p => Math.Sqrt((p.X - origin.X) * (p.X - origin.X) + (p.Y - origin.Y) * (p.Y - origin.Y))).ToArray();
        return new(distances, report.Line);
    }
}

/// <summary>A straight line of distance on time.</summary>
/// <param name="Slope">Kilometres per unit of time.</param>
/// <param name="Intercept">Kilometres at time 0.</param>
public sealed record FrontLine(double Slope, double Intercept);
