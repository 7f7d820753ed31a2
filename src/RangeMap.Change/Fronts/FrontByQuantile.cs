namespace RangeMap.Change;

/// <summary>
/// Front speed: quantile regression of distance on the year of first record, one row a square
/// (docs/methods/spread.md, eq. 3 and 5). Late finds behind the front hardly move it, unlike the least-squares line.
/// </summary>
internal static class FrontByQuantile
{
    /// <param name="records">First records without jumps and what spread from them.</param>
    /// <param name="jumps">Number of squares that were left out, for the note.</param>
    /// <param name="options">How.</param>
    /// <returns>The estimate, and the line behind it; no line where refused.</returns>
    internal static (SpreadEstimate Estimate, FrontLine? Line) Measure(FirstRecords records, int jumps, SpreadOptions options)
    {
        var reason = records.TooFew(options.MinimumFrontSquares, options.MinimumFrontTimes, options.TimeUnit);
        if (reason is not null)
            return (SpreadEstimate.Refuse(SpreadMethods.FrontQuantile, records, reason), null);

        var line = QuantileLine.Fit(records.Times, records.Distances, options.Quantile);
        var interval = BlockBootstrap.SlopeInterval(records, line, options);
        if (interval is null)
            return (SpreadEstimate.Refuse(SpreadMethods.FrontQuantile, records, SpreadWords.NoResamples), null);

        string?[] notes = [jumps > 0 ? SpreadWords.WithoutJumps(jumps) : null, line.IsUnique ? null : SpreadWords.NotUnique(line.Slopes, options.TimeUnit)];
        var note = string.Join("; ", notes.Where(n => n is not null));
        var estimate = SpreadEstimate.Of(SpreadMethods.FrontQuantile, records, line.Slope, interval.Value, note.Length > 0 ? note : null);
        return (estimate, estimate.Refused is null ? new(line.Slope, line.Intercept) : null);
    }
}
