namespace RangeMap.Change;

/// <summary>
/// The hull of a period's squares in a form that gives the hull of any draw of blocks quickly: only corners of a block's own hull can be
/// corners of a hull with others, and they are sorted once.
/// </summary>
internal sealed class HullByBlock
{
    private readonly PlanePoint[] _points;
    private readonly int[] _blockOf;
    private readonly ConvexHull _hull;
    private readonly double _squaresKm2;
    private readonly PlanePoint[] _corners;

    private HullByBlock(PlanePoint[] points, int[] blockOf, double squaresKm2)
    {
        Array.Sort(points, blockOf, Comparer<PlanePoint>.Create(ConvexHull.ByEastThenNorth));
        (_points, _blockOf, _squaresKm2) = (points, blockOf, squaresKm2);
        _hull = new(points.Length);
        foreach (var point in points)
            _hull.Add(point);
        _corners = _hull.Corners;
        HullKm2 = _hull.Area;
    }

    /// <summary>Area of the hull of all squares.</summary>
    public double HullKm2 { get; }

    /// <summary>Extent of all squares: the hull, or the squares where that is less.</summary>
    public double WholeKm2 => Math.Max(HullKm2, _squaresKm2);

    /// <summary>Sorts the squares of one period into the blocks.</summary>
    public static HullByBlock Of(SurveyFrame frame, TaxonRange range, int[] records, HeldBlocks blocks)
    {
        var cornersOf = new List<PlanePoint>?[blocks.Count];
        var squaresKm2 = 0.0;
        for (var i = 0; i < records.Length; i++)
        {
            if (records[i] == 0)
                continue;
            var square = frame.Survey.Squares[range.Squares[i]];
            (cornersOf[blocks.Of(range.Squares[i])] ??= []).AddRange([square.SouthWest, square.SouthEast, square.NorthEast, square.NorthWest]);
            squaresKm2 += square.AreaKm2;
        }

        var (points, blockOf) = (new List<PlanePoint>(), new List<int>());
        for (var block = 0; block < cornersOf.Length; block++)
        {
            foreach (var corner in cornersOf[block] is { } corners ? ConvexHull.Of(corners).Corners : [])
            {
                points.Add(corner);
                blockOf.Add(block);
            }
        }

        return new([.. points], [.. blockOf], squaresKm2);
    }

    /// <summary>Area of the hull of a draw; 0 where it holds no square.</summary>
    public double DrawnKm2(ReadOnlySpan<byte> times)
    {
        _hull.Clear();
        for (var i = 0; i < _points.Length; i++)
        {
            if (times[_blockOf[i]] > 0)
                _hull.Add(_points[i]);
        }

        return _hull.Area;
    }

    /// <summary>
    /// Variance of the logarithm of the area that comes of knowing each corner to its square only: side² / 12 by each coordinate, and the
    /// area moves with a corner by half the distance between its neighbours (docs/methods/range-size.md, eq. 6).
    /// </summary>
    public double PlaceVariance(double sideKm)
    {
        var sum = 0.0;
        for (var i = 0; i < _corners.Length; i++)
        {
            var across = PlanePoint.Km(_corners[(i + 1) % _corners.Length], _corners[(i + _corners.Length - 1) % _corners.Length]);
            sum += across * across / 4;
        }

        return HullKm2 > 0 ? sideKm * sideKm / 12 * sum / (HullKm2 * HullKm2) : 0;
    }
}
