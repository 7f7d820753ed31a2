namespace RangeMap.Change;

/// <summary>The least convex polygon round points that come sorted: Andrew's monotone chain (Andrew 1979), in one pass and with the same memory again and again.</summary>
internal sealed class ConvexHull
{
    private PlanePoint[] _lower;
    private PlanePoint[] _upper;
    private int _lowerCount;
    private int _upperCount;

    /// <summary>Makes room.</summary>
    /// <param name="points">The most points that will come.</param>
    internal ConvexHull(int points) => (_lower, _upper) = (new PlanePoint[points], new PlanePoint[points]);

    /// <summary>Area, square of the unit of the points; 0 for fewer than three points or points in a line.</summary>
    public double Area
    {
        get
        {
            if (_lowerCount == 0)
                return 0;
            var (from, sum) = (_lower[0], 0.0);
            for (var i = 1; i < _lowerCount - 1; i++)
                sum += Turn(from, _lower[i], _lower[i + 1]);
            for (var i = 1; i < _upperCount - 1; i++)
                sum -= Turn(from, _upper[i], _upper[i + 1]);
            return sum / 2;
        }
    }

    /// <summary>The corners, anticlockwise from the westernmost; no point between two others on a side.</summary>
    public PlanePoint[] Corners
    {
        get
        {
            if (_lowerCount <= 1)
                return _lower[.._lowerCount];
            var back = _upper[1..(_upperCount - 1)];
            Array.Reverse(back);
            return [.. _lower[.._lowerCount], .. back];
        }
    }

    /// <summary>The hull of points in any order.</summary>
    public static ConvexHull Of(IEnumerable<PlanePoint> points)
    {
        var sorted = points.ToArray();
        Array.Sort(sorted, ByEastThenNorth);
        var hull = new ConvexHull(sorted.Length);
        foreach (var point in sorted)
            hull.Add(point);
        return hull;
    }

    /// <summary>The order in which points must come.</summary>
    public static int ByEastThenNorth(PlanePoint a, PlanePoint b) => a.X != b.X ? a.X.CompareTo(b.X) : a.Y.CompareTo(b.Y);

    /// <summary>Forgets all points.</summary>
    public void Clear() => _lowerCount = _upperCount = 0;

    /// <summary>Takes in the next point; one that lies on the last is of no account.</summary>
    public void Add(PlanePoint point)
    {
        if (_lowerCount > 0 && _lower[_lowerCount - 1] == point)
            return;
        while (_lowerCount >= 2 && Turn(_lower[_lowerCount - 2], _lower[_lowerCount - 1], point) <= 0)
            _lowerCount--;
        while (_upperCount >= 2 && Turn(_upper[_upperCount - 2], _upper[_upperCount - 1], point) >= 0)
            _upperCount--;
        _lower[_lowerCount++] = point;
        _upper[_upperCount++] = point;
    }

    // Twice the area of the triangle; positive where the way turns left.
    private static double Turn(PlanePoint a, PlanePoint b, PlanePoint c) => (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
}
