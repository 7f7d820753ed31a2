namespace RangeMap.Records;

/// <summary>
/// A date with which one recorder's name would span more years than one person records. A doubtful date does not widen the span;
/// when more dates lie outside it than inside, the first ones were the odd ones, and the span begins anew.
/// </summary>
internal sealed class RecorderImplausible(int mostYears)
{
    private const double DaysAYear = 365.25;
    private readonly List<Span> _spans = [default];

    /// <summary>Remembers the date of a recorder, whose numbers come without gaps.</summary>
    public Doubts Add(int recorder, DayRange days)
    {
        while (_spans.Count <= recorder)
            _spans.Add(new(int.MaxValue, int.MinValue, 0, 0));
        ref var span = ref System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_spans)[recorder];
        // The possible days that widen the span least.
        var first = Math.Min(span.First, days.Last.DayNumber);
        var last = Math.Max(span.Last, days.First.DayNumber);
        if (last - first <= mostYears * DaysAYear)
        {
            span = new(first, last, span.Inside + 1, span.Outside);
            return Doubts.None;
        }

        span = span.Outside < span.Inside ? span with { Outside = span.Outside + 1 } : new(days.Last.DayNumber, days.First.DayNumber, 1, 0);
        return span.Outside > 0 ? Doubts.RecorderImplausible : Doubts.None;
    }

    private readonly record struct Span(int First, int Last, int Inside, int Outside);
}
