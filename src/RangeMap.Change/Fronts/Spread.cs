namespace RangeMap.Change;

/// <summary>Measures how fast and in which direction a species advances from the first records of its squares.</summary>
public static class Spread
{
    /// <summary>Measures spread from the places of squares.</summary>
    /// <param name="points">One per square (a place given twice counts once), in any order.</param>
    /// <param name="options">How; null for the defaults.</param>
    /// <param name="visits">Visits that could have found the species, in any order, at the same centres of squares; null where they are not known.</param>
    /// <param name="model">The arrival model fitted to the same visits, to be listed beside the others; null to leave it out.</param>
    /// <returns>A report. Rows that cannot be used, or too few of them, give refusals with their reason, never NaN.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static SpreadReport Measure(
        IEnumerable<ArrivalPoint> points, SpreadOptions? options = null, IReadOnlyList<SquareVisit>? visits = null, ArrivalAnswer? model = null)
    {
        options ??= new();
        options.ThrowIfOutOfRange();
        var records = FirstRecords.FromPoints(points, options);
        return Measure(records, visits is null ? null : VisitedSquares.Of(records, visits), model, options);
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
        return Measure(FirstRecords.FromDistances(distances), null, null, options);
    }

    private static SpreadReport Measure(FirstRecords records, IReadOnlyList<VisitedSquare>? visited, ArrivalAnswer? model, SpreadOptions options)
    {
        var (jumps, settled) = SpreadJumps.Of(records, options);
        var (front, line) = FrontByQuantile.Measure(settled, records.Count - settled.Count, options);
        var sectors = FrontBySectors.Measure(records, options);
        SpreadEstimate[] estimators =
        [
            front,
            FrontByIntervals.Measure(records, visited, options),
            .. model is null ? Array.Empty<SpreadEstimate>() : [FrontByModel.Measure(records, model)],
            FrontByAllPoints.Measure(records, options),
            FrontByArea.Measure(records, options),
            FrontBySectors.Overall(records, sectors, options),
            FrontByMaximum.Measure(records, options),
            FrontByGamma.Measure(records, visited, options),
        ];
        var phases = SpreadPhases.Measure(settled, visited, options);
        var range = OriginRange.Of(settled, front, options);
        return new(records.Count, estimators, sectors, phases, SpreadSummary.Of(new(records.Origin, estimators, sectors, phases, jumps, range, options)))
        {
            Origin = records.Origin,
            OriginRange = range,
            Line = line,
            Jumps = jumps,
            FirstYear = records.FirstTime,
            LastYear = records.LastTime,
        };
    }
}
