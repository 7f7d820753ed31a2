namespace RangeMap.Change;

/// <summary>
/// Visits to squares and how many of them found the taxon, by season and by class of visit. Squares where nothing was found share one
/// table with all taxa; only those with finds have rows of their own.
/// </summary>
internal sealed class OccupancySites
{
    private readonly int[] _visits;
    private readonly int[] _rowOf;
    private readonly int[] _ownVisits;
    private readonly int[] _ownFinds;

    /// <summary>Takes the tables. Each square has a stretch of seasons times classes numbers, one season after another.</summary>
    /// <param name="seasons">Number of seasons, 1 to 8.</param>
    /// <param name="classes">The column that a class of visits has in the logistic of detection, one number a class.</param>
    /// <param name="visits">Visits to all squares.</param>
    /// <param name="rowOf">Row of a square in the two tables that follow; -1 where it has no find.</param>
    /// <param name="ownVisits">Visits to squares with finds, which count in place of those in <paramref name="visits"/>.</param>
    /// <param name="ownFinds">Finds in the same order.</param>
    internal OccupancySites(int seasons, double[] classes, int[] visits, int[] rowOf, int[] ownVisits, int[] ownFinds) =>
        (Seasons, Classes, _visits, _rowOf, _ownVisits, _ownFinds) = (seasons, classes, visits, rowOf, ownVisits, ownFinds);

    internal int Seasons { get; }

    internal double[] Classes { get; }

    internal int Count => _rowOf.Length;

    private int Stride => Seasons * Classes.Length;

    internal ReadOnlySpan<int> Visits(int site) =>
        _rowOf[site] is >= 0 and var row ? _ownVisits.AsSpan(row * Stride, Stride) : _visits.AsSpan(site * Stride, Stride);

    /// <summary>Finds; empty where there are none.</summary>
    internal ReadOnlySpan<int> Finds(int site) => _rowOf[site] is >= 0 and var row ? _ownFinds.AsSpan(row * Stride, Stride) : default;

    /// <summary>Sites of one class of visits from their histories: a row of visits and a row of finds, one number a season.</summary>
    internal static OccupancySites OfHistories(IReadOnlyList<(int[] Visits, int[] Finds)> sites) => new(
        sites[0].Visits.Length,
        [0],
        [],
        [.. Enumerable.Range(0, sites.Count)],
        [.. sites.SelectMany(site => site.Visits)],
        [.. sites.SelectMany(site => site.Finds)]);

    /// <summary>One season of these sites by itself.</summary>
    internal OccupancySites Season(int season)
    {
        var k = Classes.Length;
        return new(1, Classes, Cut(_visits), _rowOf, Cut(_ownVisits), Cut(_ownFinds));

        int[] Cut(int[] table)
        {
            var cut = new int[table.Length / Seasons];
            for (var row = 0; row < cut.Length / k; row++)
                Array.Copy(table, (row * Seasons + season) * k, cut, row * k, k);
            return cut;
        }
    }
}
