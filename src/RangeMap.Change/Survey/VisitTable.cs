namespace RangeMap.Change;

/// <summary>Every visit of a period with its list of taxa, ordered by square, day and recorder.</summary>
public sealed class VisitTable
{
    private readonly int[] _starts;
    private readonly SurveyVisit[] _visits;
    private readonly int[] _lists;

    private VisitTable(int[] starts, SurveyVisit[] visits, int[] lists) => (_starts, _visits, _lists) = (starts, visits, lists);

    /// <summary>All visits.</summary>
    public ReadOnlySpan<SurveyVisit> All => _visits;

    /// <summary>The visits to a square, by day.</summary>
    public ReadOnlySpan<SurveyVisit> To(int square) => _visits.AsSpan(_starts[square], _starts[square + 1] - _starts[square]);

    /// <summary>The taxa noted as present on a visit, ascending, each once; empty where only absences were noted.</summary>
    public ReadOnlySpan<int> List(in SurveyVisit visit) => _lists.AsSpan(visit.ListStart, visit.ListLength);

    /// <summary>Makes the table from visits in any order.</summary>
    /// <param name="squares">Number of squares; their indices are below it.</param>
    /// <param name="visits">Square, day (as <see cref="DateOnly.DayNumber"/>), recorder's number, and the taxa noted as present.</param>
    /// <exception cref="ArgumentOutOfRangeException">A square is outside its range.</exception>
    public static VisitTable Of(int squares, IEnumerable<(int Square, int Day, int Recorder, int[] Taxa)> visits)
    {
        var sorted = visits.OrderBy(visit => (visit.Square, visit.Day, visit.Recorder)).ToArray();
        var (table, lists, starts) = (new SurveyVisit[sorted.Length], new List<int>(), new int[squares + 1]);
        for (var i = 0; i < sorted.Length; i++)
        {
            var (square, day, recorder, taxa) = sorted[i];
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)square, (uint)squares, nameof(visits));
            var start = lists.Count;
            lists.AddRange(taxa.Distinct().Order());
            table[i] = new(square, day, DateOnly.FromDayNumber(day).Year, recorder, start, lists.Count - start);
            starts[square + 1]++;
        }

        for (var square = 0; square < squares; square++)
            starts[square + 1] += starts[square];
        return new(starts, table, [.. lists]);
    }
}

/// <summary>One visit: one square, one day, one recorder or party.</summary>
/// <param name="Square">Index of the square.</param>
/// <param name="Day">The day, as <see cref="DateOnly.DayNumber"/>.</param>
/// <param name="Year">Calendar year of the day.</param>
/// <param name="Recorder">Number of the recorder or party; 0 when not named.</param>
/// <param name="ListStart">Where its list begins among all lists of the table.</param>
/// <param name="ListLength">Number of taxa noted as present.</param>
public readonly record struct SurveyVisit(int Square, int Day, int Year, int Recorder, int ListStart, int ListLength);
