using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>
/// Displacement of the boundary by bearing sector: in each sector the farthest distance reached by each year, and the
/// least-squares slope of it (docs/methods/spread.md, eq. 7 and 8).
/// </summary>
internal static class FrontBySectors
{
    internal static IReadOnlyList<SectorSpeed> Measure(FirstRecords records, SpreadOptions options)
    {
        if (records.Fault is not null || records.Origin is null)
            return [];

        var width = 2 * Math.PI / options.SectorCount;
        var bySector = records.Squares.Where(s => s.Bearing is not null)
            .ToLookup(s => (int)Math.Floor(s.Bearing!.Value / width + 0.5) % options.SectorCount);
        var times = records.Times.Distinct().ToArray();
        return [.. Enumerable.Range(0, options.SectorCount)
            .Select(i => Measure(360.0 * i / options.SectorCount, [.. bySector[i]], times, options))];
    }

    /// <summary>The mean over sectors, with the interval of a mean: sectors are taken as repeats of the same spread.</summary>
    internal static SpreadEstimate Overall(FirstRecords records, IReadOnlyList<SectorSpeed> sectors, SpreadOptions options)
    {
        var speeds = sectors.Where(s => s.KmPerYear is not null).Select(s => s.KmPerYear!.Value).ToArray();
        var reason = records.Fault
            ?? (records.Origin is null ? SpreadWords.NoPlaces : null)
            ?? records.TooFew(options.MinimumSquares, options.MinimumTimes, options.TimeUnit)
            ?? (speeds.Length < 2 ? SpreadWords.NotEnoughSectors(speeds.Length, options.MinimumSectorSquares) : null);
        if (reason is not null)
            return SpreadEstimate.Refuse(SpreadMethods.Sectors, records, reason);

        var mean = speeds.Average();
        var error = Math.Sqrt(speeds.Sum(s => (s - mean) * (s - mean)) / (speeds.Length - 1) / speeds.Length);
        var half = StudentT.InvCDF(0, 1, speeds.Length - 1, 0.5 + options.Confidence / 2) * error;
        return SpreadEstimate.Of(SpreadMethods.Sectors, records, mean, new(mean - half, mean + half), SpreadWords.SectorsNote(speeds.Length));
    }

    private static SectorSpeed Measure(double bearing, FirstRecord[] squares, double[] times, SpreadOptions options)
    {
        var (kept, boundary) = FrontByMaximum.BoundaryByTime(squares, times);
        var sector = new SectorSpeed(bearing, squares.Length)
        {
            FarthestKm = boundary.Length > 0 ? boundary[^1] : null,
            LastAdvance = boundary.Length > 0 ? kept[Array.IndexOf(boundary, boundary[^1])] : null,
        };
        if (squares.Length < options.MinimumSectorSquares)
            return sector with { Refused = SpreadWords.NotEnoughSquares(squares.Length, options.MinimumSectorSquares) };
        if (kept.Length < options.MinimumTimes)
            return sector with { Refused = SpreadWords.NotEnoughTimes(kept.Length, options.MinimumTimes, options.TimeUnit) };

        var line = LeastSquaresLine.Fit(kept, boundary);
        var interval = line.SerialSlopeInterval(options.Confidence);
        return sector with { KmPerYear = line.Slope, Low = interval.Low, High = interval.High };
    }
}
