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
        var order = Enumerable.Range(0, bearings.Count).OrderBy(i => bearings[i] ?? 0).ToArray();
        var start = AfterWidestGap([.. order.Where(counts).Select(i => bearings[i] ?? 0)], out var from) ? Array.FindIndex(order, i => counts(i) && (bearings[i] ?? 0) >= from) : 0;
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
    private static bool AfterWidestGap(double[] bearings, out double from)
    {
        from = bearings.Length > 0 ? bearings[0] : 0;
        if (bearings.Length == 0)
            return false;
        var widest = bearings[0] + 2 * Math.PI - bearings[^1];
        for (var i = 1; i < bearings.Length; i++)
        {
            // A hair of slack keeps rounding from choosing between equal gaps.
            if (bearings[i] - bearings[i - 1] > widest + 1e-9)
                (from, widest) = (bearings[i], bearings[i] - bearings[i - 1]);
        }

        return true;
    }
}
