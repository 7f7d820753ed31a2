namespace RangeMap.Change;

/// <summary>The cells of <see cref="ListCells"/> as one taxon sees them: lists that hold it stand one shorter and count as finds.</summary>
internal sealed class TaxonLists
{
    private readonly ListCells _cells;
    private readonly int _taxon;
    private readonly int[] _lists;
    private readonly int[] _finds;

    private TaxonLists(ListCells cells, int taxon)
    {
        (_cells, _taxon, _lists, _finds) = (cells, taxon, [.. cells.Lists], new int[cells.Lists.Length]);
        var last = -1;
        foreach (var visit in cells.Visits.With(taxon))
        {
            var cell = cells.CellOf(visit);
            if (cell >= 0)
                _lists[cell]--;
            if (cells.Shorter(cell) is not (>= 0 and var shorter))
                continue;

            _lists[shorter]++;
            _finds[shorter]++;
            Finds++;
            // Visits come by square.
            if (cells.Visits.All[visit].Square != last)
                (last, Squares) = (cells.Visits.All[visit].Square, Squares + 1);
        }
    }

    /// <summary>Lists with the taxon and enough others.</summary>
    internal int Finds { get; }

    /// <summary>Squares with such a list.</summary>
    internal int Squares { get; }

    internal static TaxonLists Of(ListCells cells, int taxon) => new(cells, taxon);

    /// <summary>The cells that hold a list, with decades and ln length as columns.</summary>
    internal LogisticCell[] Cells()
    {
        var cells = new List<LogisticCell>(_lists.Length);
        for (var cell = 0; cell < _lists.Length; cell++)
        {
            if (_lists[cell] > 0)
                cells.Add(new(_cells.Decades(cell), _cells.LogLength(cell), _lists[cell], _finds[cell]));
        }

        return [.. cells];
    }

    /// <summary>
    /// Variance of the slope on decades when lists of one square are no independent draws: A B A with A the inverse information and B
    /// the sum over squares of the products of their scores (Liang and Zeger 1986; docs/methods/list-length.md, eq. 3).
    /// </summary>
    internal double ClusteredVariance(LogisticPlane plane)
    {
        var scores = Scores(plane);
        double[,] a = plane.Covariance;
        double sum = 0;
        foreach (var (s0, s1, s2) in scores)
        {
            var influence = a[1, 0] * s0 + a[1, 1] * s1 + a[1, 2] * s2;
            sum += influence * influence;
        }

        return sum * scores.Length / (scores.Length - 1.0);
    }

    private (double S0, double S1, double S2)[] Scores(LogisticPlane plane)
    {
        var expected = new (double P, double U, double V)[_lists.Length];
        for (var cell = 0; cell < expected.Length; cell++)
            expected[cell] = (plane.At(_cells.Decades(cell), _cells.LogLength(cell)), _cells.Decades(cell), _cells.LogLength(cell));

        var scores = new (double S0, double S1, double S2)[_cells.Visits.Squares];
        var all = _cells.Visits.All;
        for (var visit = 0; visit < all.Length; visit++)
            Add(ref scores[all[visit].Square], _cells.CellOf(visit), 0, -1, expected);

        foreach (var visit in _cells.Visits.With(_taxon))
        {
            var cell = _cells.CellOf(visit);
            Add(ref scores[all[visit].Square], cell, 0, 1, expected);
            Add(ref scores[all[visit].Square], _cells.Shorter(cell), 1, -1, expected);
        }

        return scores;
    }

    private static void Add(ref (double S0, double S1, double S2) score, int cell, double find, double sign, (double P, double U, double V)[] expected)
    {
        if (cell < 0)
            return;
        var (p, u, v) = expected[cell];
        var left = find + sign * p;
        score = (score.S0 + left, score.S1 + left * u, score.S2 + left * v);
    }
}
