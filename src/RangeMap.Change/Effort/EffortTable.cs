using System.Runtime.InteropServices;

namespace RangeMap.Change;

/// <summary>The effort of every square in one period (docs/methods/effort.md).</summary>
public sealed class EffortTable
{
    private readonly SquareEffort[] _squares;

    private EffortTable(SquareEffort[] squares) => _squares = squares;

    /// <summary>Number of squares, surveyed or not.</summary>
    public int Count => _squares.Length;

    /// <summary>The effort in a square.</summary>
    public SquareEffort this[int square] => _squares[square];

    /// <summary>Measures the effort of a period.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="period">One of its periods.</param>
    /// <param name="options">The thresholds of well surveyed; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static EffortTable Of(GroupSurvey survey, SurveyPeriod period, ChangeOptions? options = null)
    {
        options ??= new();
        options.ThrowIfOutOfRange();
        var counter = new Counter(survey.Taxa, period, options);
        var squares = new SquareEffort[survey.Squares.Count];
        for (var square = 0; square < squares.Length; square++)
            squares[square] = counter.Count(square);
        return new(squares);
    }

    /// <summary>Counts square after square with the same memory.</summary>
    private sealed class Counter(int taxa, SurveyPeriod period, ChangeOptions options)
    {
        private readonly int[] _mentions = new int[taxa];
        private readonly List<int> _listed = [];
        private readonly List<int> _counts = [];
        private readonly List<int> _lengths = [];
        private readonly HashSet<int> _recorders = [];

        public SquareEffort Count(int square)
        {
            var visits = period.Visits.To(square);
            var byLists = CountLists(visits);
            var (byRecords, records) = CountRecords(period.Found.InSquare(square));
            return new(
                visits.Length,
                _recorders.Count,
                records,
                visits.IsEmpty ? 0 : _lengths.Average(),
                Median(),
                byRecords,
                byLists,
                visits.Length >= options.WellSurveyedVisits && byLists.Coverage >= options.WellSurveyedCoverage);
        }

        private Richness CountLists(ReadOnlySpan<SurveyVisit> visits)
        {
            _recorders.Clear();
            _lengths.Clear();
            _listed.Clear();
            foreach (ref readonly var visit in visits)
            {
                if (visit.Recorder != 0)
                    _recorders.Add(visit.Recorder);
                _lengths.Add(visit.ListLength);
                foreach (var taxon in period.Visits.List(visit))
                {
                    if (_mentions[taxon]++ == 0)
                        _listed.Add(taxon);
                }
            }

            _counts.Clear();
            foreach (var taxon in _listed)
            {
                _counts.Add(_mentions[taxon]);
                _mentions[taxon] = 0;
            }

            return Richness.FromLists(CollectionsMarshal.AsSpan(_counts), visits.Length);
        }

        private (Richness Richness, long Records) CountRecords(ReadOnlySpan<Find> finds)
        {
            _counts.Clear();
            long records = 0;
            foreach (var find in finds)
            {
                _counts.Add(find.Records);
                records += find.Records;
            }

            return (Richness.FromRecords(CollectionsMarshal.AsSpan(_counts)), records);
        }

        private double Median()
        {
            if (_lengths.Count == 0)
                return 0;
            _lengths.Sort();
            return (_lengths[(_lengths.Count - 1) / 2] + _lengths[_lengths.Count / 2]) / 2.0;
        }
    }
}
