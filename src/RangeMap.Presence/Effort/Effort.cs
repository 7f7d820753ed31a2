using RangeMap.Grids;

namespace RangeMap.Presence;

/// <summary>
/// Recording effort by square at one size: the days of every visit and the length of its list. A visit is one square, one
/// day, one recorder or party; the same outing through two monads of one hectad is two visits to monads and one to the hectad.
/// </summary>
public sealed class Effort
{
    private readonly Dictionary<long, Visit[]> _visits;

    private Effort(SquareSize size, Dictionary<long, Visit[]> visits) => (Size, _visits) = (size, visits);

    /// <summary>The side of the squares.</summary>
    public SquareSize Size { get; }

    /// <summary>The squares that were visited at all, in no order.</summary>
    public IEnumerable<Square> Squares => _visits.Keys.Select(Square.FromCode);

    /// <summary>Measures effort from a log.</summary>
    /// <param name="log">The visits.</param>
    /// <param name="size">The side; notes whose own square fits in no square of this side are left out.</param>
    /// <param name="counts">Tells by taxon number whether a taxon is recorded together with those of interest.</param>
    public static Effort Of(VisitLog log, SquareSize size, Func<int, bool> counts)
    {
        var notes = new List<VisitEntry>(log.Entries.Length);
        foreach (ref readonly var entry in log.Entries)
        {
            if (counts(entry.TaxonNumber) && Square.FromCode(entry.SquareCode).TryCoarsen(size, out var container))
                notes.Add(entry with { SquareCode = container.Code });
        }

        var visits = new Dictionary<long, Visit[]>();
        var ofSquare = new List<Visit>();
        var sorted = VisitLog.Gather(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(notes)).Entries;
        for (var i = 0; i < sorted.Length;)
        {
            var square = sorted[i].SquareCode;
            ofSquare.Clear();
            while (i < sorted.Length && sorted[i].SquareCode == square)
                ofSquare.Add(ReadVisit(sorted, ref i));
            visits.Add(square, [.. ofSquare]);
        }

        return new(size, visits);
    }

    /// <summary>Number of visits to a square on the days of a period.</summary>
    public int Visits(Square square, Period period) => In(square, period).Length;

    /// <summary>
    /// Number of those visits with a list of all taxa of the group that were found: there every taxon that the list lacks was looked for.
    /// </summary>
    public int CompleteVisits(Square square, Period period)
    {
        var complete = 0;
        foreach (ref readonly var visit in In(square, period))
            complete += visit.Complete ? 1 : 0;
        return complete;
    }

    /// <summary>The visits to a square on the days of a period, by day.</summary>
    public ReadOnlySpan<Visit> In(Square square, Period period)
    {
        if (!_visits.TryGetValue(square.Code, out var visits))
            return [];
        var from = FirstNotBefore(visits, period.FirstDay);
        return visits.AsSpan(from, FirstNotBefore(visits, period.EndDay) - from);
    }

    private static Visit ReadVisit(ReadOnlySpan<VisitEntry> sorted, ref int i)
    {
        var (square, day, recorder) = (sorted[i].SquareCode, sorted[i].Day, sorted[i].Recorder);
        var (length, last, complete) = (0, -1, false);
        for (; i < sorted.Length && sorted[i].SquareCode == square && sorted[i].Day == day && sorted[i].Recorder == recorder; i++)
        {
            complete |= sorted[i].Complete;
            if (sorted[i].Present && sorted[i].TaxonNumber != last)
                (length, last) = (length + 1, sorted[i].TaxonNumber);
        }

        return new(day, length, complete);
    }

    private static int FirstNotBefore(Visit[] visits, int day)
    {
        int low = 0, high = visits.Length;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (visits[middle].Day < day)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }
}

/// <summary>One visit.</summary>
/// <param name="Day">The day, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="ListLength">Number of taxa noted as present.</param>
/// <param name="Complete">True when its list, or one of them where the square holds several places, has all taxa of the group that were found.</param>
public readonly record struct Visit(int Day, int ListLength, bool Complete = false);
