namespace RangeMap.Change;

/// <summary>What the front speed would be were the origin another: it is measured again from each of the earliest squares.</summary>
/// <param name="Squares">Number of squares tried as origin.</param>
/// <param name="Low">Least speed, km per year or per <see cref="SpreadOptions.TimeUnit"/>.</param>
/// <param name="High">Greatest speed.</param>
public sealed record OriginRange(int Squares, double Low, double High)
{
    // Where the first year holds many squares, these stand for all: taken evenly in order of distance from the origin.
    private const int Most = 12;

    /// <summary>The range; null where there is no front speed.</summary>
    internal static OriginRange? Of(FirstRecords records, SpreadEstimate front, SpreadOptions options)
    {
        if (front.KmPerYear is null || records.Origin is null)
            return null;
        var places = Array.ConvertAll(records.Squares, square => square.Place!.Value);
        var speeds = Earliest(records, options.OriginSquares).Select(origin =>
            QuantileLine.Fit(records.Times, Array.ConvertAll(places, place => PlanePoint.Km(place, origin)), options.Quantile).Slope).ToList();
        return new(speeds.Count, speeds.Min(), speeds.Max());
    }

    private static List<PlanePoint> Earliest(FirstRecords records, int squares)
    {
        var last = records.Times[Math.Min(squares, records.Count) - 1];
        var early = records.Squares.TakeWhile(square => square.Time <= last).OrderBy(square => square.DistanceKm).ThenBy(square => square.Bearing).ToList();
        var number = Math.Min(Most, early.Count);
        return [.. Enumerable.Range(0, number).Select(i => early[(int)((long)i * early.Count / number)].Place!.Value)];
    }
}
