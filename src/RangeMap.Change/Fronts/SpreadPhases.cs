namespace RangeMap.Change;

/// <summary>A stretch of years over which the speed was the same.</summary>
/// <param name="From">First time.</param>
/// <param name="To">Last time; the next phase begins where this one ends.</param>
/// <param name="KmPerYear">Kilometres per year, or per <see cref="SpreadOptions.TimeUnit"/>.</param>
/// <param name="Low">Lower end of the interval, same unit.</param>
/// <param name="High">Upper end of the interval, same unit.</param>
public sealed record SpreadPhase(double From, double To, double KmPerYear, double Low, double High)
{
    /// <summary>What the front did: an interval that holds 0 tells of no movement, whatever its middle says.</summary>
    public FrontMovement Movement => Low > 0 ? FrontMovement.Advances : High < 0 ? FrontMovement.DrawsBack : FrontMovement.StandsStill;
}

/// <summary>What a front does during a phase.</summary>
public enum FrontMovement
{
    /// <summary>It moves outwards: the interval of its speed lies above 0.</summary>
    Advances,

    /// <summary>It cannot be told to move: the interval holds 0.</summary>
    StandsStill,

    /// <summary>It moves inwards: the interval lies below 0.</summary>
    DrawsBack,
}

/// <summary>Asks whether the spread had two speeds, one after the other (docs/methods/spread.md, eq. 9).</summary>
internal static class SpreadPhases
{
    // Akaike's criterion must fall by this much: odds of about 150 to 1 against one speed.
    private const double ClearFall = 10;

    // Of the larger speed; smaller changes are no news.
    private const double TellingChange = 0.25;

    // Beyond this many units of time only times with first records are looked at.
    private const double LongestSeries = 500;

    /// <summary>Two phases, or none. Where visits are known a square counts only while it is held, so that a retreat is seen too.</summary>
    internal static IReadOnlyList<SpreadPhase> Measure(FirstRecords records, IReadOnlyList<VisitedSquare>? visited, SpreadOptions options)
    {
        if (records.TooFew(options.MinimumFrontSquares, 2 * BrokenLine.LeastSide, options.TimeUnit) is not null)
            return [];

        var (times, farthest) = visited is null
            ? FrontByMaximum.BoundaryByTime(records.Squares, EveryTime(records, options))
            : HeldBoundary.ByTime(records, visited, EveryTime(records, options));
        return Measure(times, farthest, options.Confidence);
    }

    // Years without a first record belong to the series too: a front that stands still is told by them alone.
    private static IEnumerable<double> EveryTime(FirstRecords records, SpreadOptions options)
    {
        double first = records.Times[0], last = Math.Max(records.Times[^1], options.RecordedUntil ?? records.Times[^1]);
        var whole = last - first <= LongestSeries
            ? Enumerable.Range(0, (int)(last - first) + 1).Select(i => first + i)
            : [];
        return records.Times.Concat(whole).Distinct().Order();
    }

    /// <summary>Two phases, or none where one speed will do.</summary>
    internal static IReadOnlyList<SpreadPhase> Measure(double[] times, double[] reach, double confidence)
    {
        if (BrokenLine.Fit(times, reach) is not { } broken || !IsClear(broken, times, reach))
            return [];

        var left = times.Count(t => t <= broken.Break);
        var before = Interval(times[..left], reach[..left], broken.SlopeBefore, confidence);
        var after = Interval(times[left..], reach[left..], broken.SlopeAfter, confidence);
        return
        [
            new(times[0], broken.Break, broken.SlopeBefore, before.Low, before.High),
            new(broken.Break, times[^1], broken.SlopeAfter, after.Low, after.High),
        ];
    }

    // A running series has fewer independent points than it has years; the criterion is judged on their number.
    private static bool IsClear(BrokenLine broken, double[] times, double[] reach)
    {
        double before = broken.SlopeBefore, after = broken.SlopeAfter;
        if (Math.Abs(after - before) < TellingChange * Math.Max(Math.Abs(before), Math.Abs(after)))
            return false;

        var straight = LeastSquaresLine.Fit(times, reach);
        var bent = Array.ConvertAll(times, t => before * t + (after - before) * Math.Max(0, t - broken.Break));
        var r = Math.Clamp(LeastSquaresLine.Fit(times, [.. reach.Zip(bent, (y, fit) => y - fit)]).LagOneCorrelation, 0, 0.99);
        var independent = times.Length * (1 - r) / (1 + r);
        return independent * Math.Log(straight.ResidualSquares / broken.ResidualSquares) - 4 > ClearFall;
    }

    // Each piece's own line tells the error; the speed is that of the pieces that meet.
    private static Interval Interval(double[] times, double[] reach, double slope, double confidence)
    {
        var line = LeastSquaresLine.Fit(times, reach);
        var own = line.SerialSlopeInterval(confidence);
        return new(slope + own.Low - line.Slope, slope + own.High - line.Slope);
    }
}
