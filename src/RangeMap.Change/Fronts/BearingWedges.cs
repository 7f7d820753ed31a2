namespace RangeMap.Change;

/// <summary>
/// Cuts squares by their bearing from the origin into wedges that hold equal numbers of finds (docs/methods/spread.md, eq. 5): the blocks that
/// are taken to be independent of each other.
/// </summary>
internal static class BearingWedges
{
    private const int LeastFinds = 5;

    /// <summary>Indices of the squares of each wedge; at least two wedges.</summary>
    /// <param name="bearings">Bearing of each square, radians; null at the origin.</param>
    /// <param name="counts">Whether a square counts towards the number of its wedge.</param>
    /// <param name="wanted">Wanted number of wedges; fewer where one would hold less than 5 squares that count.</param>
    internal static int[][] Of(IReadOnlyList<double?> bearings, Func<int, bool> counts, int wanted)
    {
        // Nine decimals are a millimetre at 1,000 km: squares in one direction stay in the order given, however the map is turned.
        var rounded = bearings.Select(bearing => Math.Round(bearing ?? 0, 9)).ToArray();
        var order = Enumerable.Range(0, rounded.Length).OrderBy(i => rounded[i]).ToArray();
        var start = Math.Max(0, Array.IndexOf(order, AfterWidestGap([.. order.Where(counts)], rounded)));
        var turned = order[start..].Concat(order[..start]).ToArray();
        var total = order.Count(counts);
        var number = Math.Max(2, Math.Min(wanted, total / LeastFinds));
        var wedges = Enumerable.Range(0, number).Select(_ => new List<int>()).ToArray();
        int wedge = 0, passed = 0;
        foreach (var i in turned)
        {
            var counted = counts(i);
            while (wedge < number - 1 && passed >= (wedge + 1L) * total / number && counted)
                wedge++;
            wedges[wedge].Add(i);
            passed += counted ? 1 : 0;
        }

        return Array.ConvertAll(wedges, list => list.ToArray());
    }

    // Wedges are counted from the far side of the widest gap in the bearings, so that turning the map turns them too.
    private static int AfterWidestGap(int[] order, double[] bearings)
    {
        if (order.Length == 0)
            return -1;
        var (first, widest) = (order[0], bearings[order[0]] + 2 * Math.PI - bearings[order[^1]]);
        for (var i = 1; i < order.Length; i++)
        {
            var gap = bearings[order[i]] - bearings[order[i - 1]];
            // A hair of slack keeps rounding from choosing between equal gaps.
            if (gap > widest + 1e-8)
                (first, widest) = (order[i], gap);
        }

        return first;
    }
}
