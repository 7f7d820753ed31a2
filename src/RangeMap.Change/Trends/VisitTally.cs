namespace RangeMap.Change;

/// <summary>
/// The shared visits counted by square, period and class of list length, the same for all taxa; and the sites of one taxon made from
/// them. A list is classed by its length without the taxon; a list of the taxon alone, or of nothing, is passed over.
/// </summary>
internal sealed class VisitTally
{
    private const int Seasons = 2;
    private const int MostClasses = 4;

    private readonly int[] _tally;
    private readonly int[] _classOf;

    internal VisitTally(SharedVisits visits)
    {
        Visits = visits;
        var lengths = visits.All.ToArray().Select(visit => visit.Length).Where(length => length > 0).Order().ToArray();
        _classOf = ClassOf(lengths);
        var classes = lengths.Length == 0 ? 1 : _classOf[^1] + 1;
        Classes = new double[classes];
        foreach (var group in lengths.GroupBy(length => _classOf[length]))
            Classes[group.Key] = group.Average(length => Math.Log(length)) - lengths.Average(length => Math.Log(length));
        _tally = new int[visits.Squares * Stride];
        foreach (var visit in visits.All)
        {
            if (visit.Length > 0)
                _tally[At(visit, visit.Length)]++;
        }

        LeastRepeated = Math.Min(Repeated(0), Repeated(1));
    }

    internal SharedVisits Visits { get; }

    /// <summary>Mean ln length of each class, less that of all lists.</summary>
    internal double[] Classes { get; }

    private int Stride => Seasons * Classes.Length;

    /// <summary>Squares with two visits or more in a period, in the period that has fewer of them.</summary>
    internal int LeastRepeated { get; }

    /// <summary>The sites of a taxon, and in how many of them it was found in each season.</summary>
    internal (OccupancySites Sites, int Before, int After) SitesOf(int taxon)
    {
        var (rowOf, rows) = (new int[Visits.Squares], new List<int>());
        Array.Fill(rowOf, -1);
        foreach (var visit in Visits.With(taxon))
        {
            var square = Visits.All[visit].Square;
            if (rowOf[square] >= 0)
                continue;
            rowOf[square] = rows.Count;
            rows.Add(square);
        }

        int[] visits = new int[rows.Count * Stride], finds = new int[rows.Count * Stride];
        for (var row = 0; row < rows.Count; row++)
            Array.Copy(_tally, rows[row] * Stride, visits, row * Stride, Stride);
        Move(taxon, rowOf, visits, finds);
        return (new(Seasons, Classes, _tally, rowOf, visits, finds), Found(finds, 0), Found(finds, 1));
    }

    // A list that holds the taxon is one shorter without it.
    private void Move(int taxon, int[] rowOf, int[] visits, int[] finds)
    {
        foreach (var number in Visits.With(taxon))
        {
            var visit = Visits.All[number];
            var shift = (rowOf[visit.Square] - visit.Square) * Stride;
            visits[At(visit, visit.Length) + shift]--;
            if (visit.Length == 1)
                continue;
            visits[At(visit, visit.Length - 1) + shift]++;
            finds[At(visit, visit.Length - 1) + shift]++;
        }
    }

    private int Repeated(int season) => Enumerable.Range(0, Visits.Squares)
        .Count(square => Enumerable.Range((square * Seasons + season) * Classes.Length, Classes.Length).Sum(i => _tally[i]) >= 2);

    private int Found(int[] finds, int season)
    {
        var (found, classes) = (0, Classes.Length);
        for (var row = 0; row < finds.Length / Stride; row++)
            found += finds.AsSpan((row * Seasons + season) * classes, classes).ContainsAnyExcept(0) ? 1 : 0;
        return found;
    }

    private int At(in SharedVisit visit, int length) => (visit.Square * Seasons + visit.Season) * Classes.Length + _classOf[length];

    // Class of each length: quarters of all lists, with equal lengths in one class and no class empty.
    private static int[] ClassOf(int[] lengths)
    {
        if (lengths.Length == 0)
            return [0];
        var classOf = new int[lengths[^1] + 1];
        var (at, next) = (0, 0);
        for (var length = 1; length < classOf.Length; length++)
        {
            classOf[length] = next;
            var count = 0;
            for (; at < lengths.Length && lengths[at] == length; at++)
                count++;
            if (count > 0 && at >= (next + 1.0) * lengths.Length / MostClasses && at < lengths.Length)
                next++;
        }

        return classOf;
    }
}
