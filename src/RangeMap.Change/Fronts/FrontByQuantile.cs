namespace RangeMap.Change;

/// <summary>
/// Front speed: quantile regression of distance on the year of first record, one row a square
/// (docs/methods/spread.md, eq. 3 and 5). Late finds behind the front hardly move it, unlike the least-squares line.
/// </summary>
internal static class FrontByQuantile
{
    internal static SpreadEstimate Measure(FirstRecords records, SpreadOptions options)
    {
        var reason = records.TooFew(options.MinimumFrontSquares, options.MinimumFrontTimes, options.TimeUnit);
        if (reason is not null)
            return SpreadEstimate.Refuse(SpreadMethods.FrontQuantile, records, reason);

        var line = QuantileLine.Fit(records.Times, records.Distances, options.Quantile);
        var interval = BlockBootstrap.SlopeInterval(records, line, options);
        if (interval is null)
            return SpreadEstimate.Refuse(SpreadMethods.FrontQuantile, records, SpreadWords.NoResamples);

        var note = line.IsUnique ? null : SpreadWords.NotUnique(line.Slopes, options.TimeUnit);
        return SpreadEstimate.Of(SpreadMethods.FrontQuantile, records, line.Slope, interval.Value, note);
    }
}
