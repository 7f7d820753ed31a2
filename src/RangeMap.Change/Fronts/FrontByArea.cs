namespace RangeMap.Change;

/// <summary>
/// Growth of the radius of a disc, or of the part of one that is land, with the area of all squares found so far
/// (Skellam 1951, Biometrika 38:196-218; docs/methods/spread.md, eq. 1). Measures area gained: a species that fills in
/// behind a standing front has a positive speed.
/// </summary>
internal static class FrontByArea
{
    /// <summary>Radius in km of a disc sector with the given area.</summary>
    /// <param name="squareKm">Area, at least 0.</param>
    /// <param name="openAngle">Angle of the sector in radians, 2 pi for a whole disc.</param>
    internal static double Radius(double squareKm, double openAngle = 2 * Math.PI) => Math.Sqrt(2 * squareKm / openAngle);

    internal static SpreadEstimate Measure(FirstRecords records, SpreadOptions options)
    {
        var reason = records.TooFew(options.MinimumSquares, options.MinimumTimes, options.TimeUnit);
        if (reason is not null)
            return SpreadEstimate.Refuse(SpreadMethods.RootArea, records, reason);

        var angle = LandAngle.Of(records, options);
        var (times, radii) = RadiusByTime(records, options.SquareSideKm, angle);
        var line = LeastSquaresLine.Fit(times, radii);
        return SpreadEstimate.Of(SpreadMethods.RootArea, records, line.Slope, line.SerialSlopeInterval(options.Confidence), SpreadWords.RootAreaNote(angle));
    }

    internal static (double[] Times, double[] Radii) RadiusByTime(FirstRecords records, double sideKm, double openAngle)
    {
        var squareArea = sideKm * sideKm;
        var series = records.Times.Index().GroupBy(r => r.Item)
            .Select(g => (Time: g.Key, Radius: Radius((g.Max(r => r.Index) + 1) * squareArea, openAngle)))
            .ToList();
        return ([.. series.Select(s => s.Time)], [.. series.Select(s => s.Radius)]);
    }
}
