namespace RangeMap.Change;

/// <summary>
/// Average speed of first records: least squares of distance on the year of first record (docs/methods/spread.md,
/// eq. 2). Low where squares are found long after they were reached; its interval knows nothing of that.
/// </summary>
internal static class FrontByAllPoints
{
    internal static SpreadEstimate Measure(FirstRecords records, SpreadOptions options)
    {
        var reason = records.TooFew(options.MinimumSquares, options.MinimumTimes, options.TimeUnit);
        if (reason is not null)
            return SpreadEstimate.Refuse(SpreadMethods.AllPoints, records, reason);

        var line = LeastSquaresLine.Fit(records.Times, records.Distances);
        return SpreadEstimate.Of(SpreadMethods.AllPoints, records, line.Slope, line.SlopeInterval(options.Confidence), SpreadWords.AllPointsNote);
    }
}
