namespace RangeMap.Change;

/// <summary>
/// Extent of occurrence: the area of the convex polygon round all occupied squares, corners included, so that one square has its own area and the extent
/// is never below the area occupied (docs/methods/range-size.md, eq. 6). A measure of how far risk is spread, not of how much is occupied.
/// </summary>
public static class Extent
{
    /// <summary>Square kilometres of the extent of squares on one plane; 0 for none.</summary>
    public static double Km2(IEnumerable<SurveySquare> squares) => ConvexHull.AreaKm2(ConvexHull.Of(squares.SelectMany(Corners)).ToArray());

    internal static ChangeEstimate Measure(TaxonSquares taxon)
    {
        const string method = ChangeMethods.Extent, unit = "%";
        var n = taxon.Before.Length + taxon.After.Length;
        if (taxon.TooFew() is { } reason)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, reason);
        if (taxon.After.Length == 0)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, "The taxon was not found in the later period; it may be gone, or have been missed.");
        var (before, after) = (new BlockHulls(taxon, taxon.Before), new BlockHulls(taxon, taxon.After));
        if (before.Blocks < 2 || after.Blocks < 2)
            return ChangeEstimate.Refuse(taxon.Taxon, method, unit, n, "All squares lie close together, so the extent has no interval.");
        var (areaBefore, areaAfter) = (before.AreaKm2(null), after.AreaKm2(null));
        var error = ErrorOfLog(taxon, before, after);
        var log = Math.Log(areaAfter / areaBefore);
        var reach = StudentQuantile.Of(Math.Min(before.Blocks, after.Blocks) - 1) * error;
        var interval = new Interval(100 * (Math.Exp(log - reach) - 1), 100 * (Math.Exp(log + reach) - 1));
        return ChangeEstimate.Of(taxon.Taxon, method, unit, n, 100 * (areaAfter / areaBefore - 1), interval) with
        {
            Before = areaBefore,
            After = areaAfter,
            Note = "Square kilometres round all squares, corners included; one square far out moves it, and more recording widens it.",
        };
    }

    internal static PlanePoint[] Corners(SurveySquare square) => [square.SouthWest, square.SouthEast, square.NorthEast, square.NorthWest];

    /// <summary>Standard deviation of the logarithm of the ratio over draws of blocks with replacement, the same blocks for both periods.</summary>
    private static double ErrorOfLog(TaxonSquares taxon, BlockHulls before, BlockHulls after)
    {
        double sum = 0, squares = 0;
        var draws = taxon.Prepared.BlockDraws;
        var used = 0;
        foreach (var drawn in draws)
        {
            var (a, b) = (before.AreaKm2(drawn), after.AreaKm2(drawn));
            if (!(a > 0) || !(b > 0))
                continue;
            var log = Math.Log(b / a);
            sum += log;
            squares += log * log;
            used++;
        }

        return used < 2 ? double.NaN : Math.Sqrt(Math.Max(0, (squares - sum * sum / used) / (used - 1)));
    }

    /// <summary>The hull of each block's squares, sorted once, so that the hull of any choice of blocks is one pass.</summary>
    private sealed class BlockHulls
    {
        private readonly PlanePoint[] _points;
        private readonly int[] _block;
        private readonly PlanePoint[] _chosen, _hull;

        public BlockHulls(TaxonSquares taxon, int[] squares)
        {
            var byBlock = squares.GroupBy(square => taxon.Blocks.OfSquare[square]).ToList();
            var points = byBlock
                .SelectMany(block => ConvexHull.Of(block.SelectMany(square => Corners(taxon.Squares[square]))).Select(point => (Point: point, Block: block.Key)))
                .OrderBy(p => p.Point.X).ThenBy(p => p.Point.Y).ToList();
            _points = [.. points.Select(p => p.Point)];
            _block = [.. points.Select(p => p.Block)];
            _chosen = new PlanePoint[_points.Length];
            _hull = new PlanePoint[_points.Length + 1];
            Blocks = byBlock.Count;
        }

        public int Blocks { get; }

        /// <summary>Area of the hull of the blocks that were drawn; of all for null.</summary>
        public double AreaKm2(byte[]? drawn)
        {
            var count = 0;
            for (var i = 0; i < _points.Length; i++)
            {
                if (drawn is null || drawn[_block[i]] > 0)
                    _chosen[count++] = _points[i];
            }

            return ConvexHull.AreaKm2(_hull.AsSpan(0, ConvexHull.Chain(_chosen.AsSpan(0, count), _hull)));
        }
    }
}
