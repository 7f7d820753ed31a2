namespace RangeMap.Change;

/// <summary>
/// Growth of the farthest distance reached so far, by least squares over the years with first records
/// (docs/methods/spread.md, eq. 7). One square far ahead moves it for all later years.
/// </summary>
internal static class FrontByMaximum
{
    internal static SpreadEstimate Measure(FirstRecords records, SpreadOptions options)
    {
        var reason = records.TooFew(options.MinimumSquares, options.MinimumTimes, options.TimeUnit);
        if (reason is not null)
            return SpreadEstimate.Refuse(SpreadMethods.Maximum, records, reason);

        var (times, maxima) = BoundaryByTime(records.Squares, records.Times.Distinct());
        var line = LeastSquaresLine.Fit(times, maxima);
        return SpreadEstimate.Of(SpreadMethods.Maximum, records, line.Slope, line.SerialSlopeInterval(options.Confidence), SpreadWords.MaximumNote);
    }

    /// <summary>The farthest distance reached by each time, km, from the first time at which there is one.</summary>
    /// <param name="squares">In order of time.</param>
    /// <param name="times">Ascending.</param>
    internal static (double[] Times, double[] Maxima) BoundaryByTime(IReadOnlyList<FirstRecord> squares, IEnumerable<double> times)
    {
        List<double> kept = [], maxima = [];
        var next = 0;
        var farthest = double.NegativeInfinity;
        foreach (var time in times)
        {
            for (; next < squares.Count && squares[next].Time <= time; next++)
                farthest = Math.Max(farthest, squares[next].DistanceKm);
            if (next == 0)
                continue;
            kept.Add(time);
            maxima.Add(farthest);
        }

        return ([.. kept], [.. maxima]);
    }
}
