using MathNet.Numerics.Distributions;

namespace RangeMap.Change;

/// <summary>
/// Speed from arrivals known as intervals between visits: regression of the year of arrival on distance (docs/methods/arrival-years.md, eq. 5 and 7).
/// Squares found late after visits that found nothing do not pull it down; visits that missed the species push it up.
/// </summary>
internal static class FrontByIntervals
{
    internal static SpreadEstimate Measure(FirstRecords records, IReadOnlyList<VisitedSquare>? squares, SpreadOptions options)
    {
        var used = squares?.Where(square => square.Arrival.IsSound).ToArray() ?? [];
        var dated = used.Count(square => square.Arrival.IsClosed);
        var reason = records.Fault
            ?? (squares is null ? SpreadWords.NoVisits : null)
            ?? (records.Origin is null ? SpreadWords.NoPlaces : null)
            ?? records.TooFew(options.MinimumSquares, options.MinimumTimes, options.TimeUnit)
            ?? (dated < options.MinimumSquares ? SpreadWords.NotEnoughDated(dated, options.MinimumSquares) : null);
        if (reason is not null)
            return Refuse(records, reason, used.Length);

        var answer = CensoredLine.Fit([.. used.Select(square => (square.DistanceKm, square.Arrival))]);
        if (answer.Line is not { } line)
            return Refuse(records, answer.Refused!, used.Length);
        return SpeedInterval(line, used, options) is { } interval
            ? SpreadEstimate.Of(SpreadMethods.IntervalCensored, records, line.Speed, interval, SpreadWords.IntervalsNote) with { N = used.Length }
            : Refuse(records, SpreadWords.NoBound, used.Length);
    }

    /// <summary>The interval with squares of one wedge taken to belong together; null where that of the slope holds 0.</summary>
    private static Interval? SpeedInterval(CensoredLine line, VisitedSquare[] squares, SpreadOptions options)
    {
        var wedges = BearingWedges.Of(Array.ConvertAll(squares, square => square.Bearing), i => squares[i].IsFound, options.Blocks);
        var variance = wedges.Sum(wedge => Math.Pow(wedge.Sum(i => line.Pulls[i]), 2)) * wedges.Length / (wedges.Length - 1);
        var half = StudentT.InvCDF(0, 1, wedges.Length - 1, 0.5 + options.Confidence / 2) * Math.Sqrt(variance);
        return CensoredLine.Inverse(new(line.Slope - half, line.Slope + half));
    }

    private static SpreadEstimate Refuse(FirstRecords records, string reason, int squares) =>
        SpreadEstimate.Refuse(SpreadMethods.IntervalCensored, records, reason) with { N = squares };
}
