namespace RangeMap.Change;

/// <summary>Measures how fast and in which direction a species advances from the first records of its squares.</summary>
public static class Spread
{
    /// <summary>Measures spread from the places of squares.</summary>
    /// <param name="points">One per square (a place given twice counts once), in any order.</param>
    /// <param name="options">How; null for the defaults.</param>
    /// <returns>A report. Rows that cannot be used, or too few of them, give refusals with their reason, never NaN.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static SpreadReport Measure(IEnumerable<ArrivalPoint> points, SpreadOptions? options = null)
    {
        options ??= new();
        options.ThrowIfOutOfRange();
        return Measure(FirstRecords.FromPoints(points, options), options);
    }

    /// <summary>Measures spread from distances alone; there are no sectors then.</summary>
    /// <param name="distances">One per square, in any order.</param>
    /// <param name="options">How; null for the defaults.</param>
    /// <returns>A report. Rows that cannot be used, or too few of them, give refusals with their reason, never NaN.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static SpreadReport MeasureDistances(IEnumerable<ArrivalDistance> distances, SpreadOptions? options = null)
    {
        options ??= new();
        options.ThrowIfOutOfRange();
        return Measure(FirstRecords.FromDistances(distances), options);
    }

    private static SpreadReport Measure(FirstRecords records, SpreadOptions options)
    {
        var sectors = FrontBySectors.Measure(records, options);
        SpreadEstimate[] estimators =
        [
            FrontByQuantile.Measure(records, options),
            FrontByAllPoints.Measure(records, options),
            FrontByArea.Measure(records, options),
            FrontBySectors.Overall(records, sectors, options),
            FrontByMaximum.Measure(records, options),
        ];
        var phases = SpreadPhases.Measure(records, options);
        var summary = SpreadSummary.Of(records.Origin, estimators, sectors, phases, options);
        return new(records.Count, estimators, sectors, phases, summary)
        {
            Origin = records.Origin,
            FirstYear = records.FirstTime,
            LastYear = records.LastTime,
        };
    }
}
