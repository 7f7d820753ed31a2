namespace RangeMap.Maps;

/// <summary>
/// A ring of whole tile units without repeated points, without points in the middle of a straight side and without
/// spikes. Rounding makes all three, and the vector tile specification forbids the first.
/// </summary>
internal sealed class WholeRing
{
    private int[] _x = new int[64];
    private int[] _y = new int[64];
    private int _count;

    public void Clear() => _count = 0;

    public void Add(int x, int y)
    {
        while (_count > 0 && IsNeedless(_count - 1, x, y))
            _count--;
        if (_count == _x.Length)
        {
            Array.Resize(ref _x, _count * 2);
            Array.Resize(ref _y, _count * 2);
        }

        (_x[_count], _y[_count]) = (x, y);
        _count++;
    }

    /// <summary>Writes the ring as MoveTo, LineTo and ClosePath; false, with nothing written, when it has no area.</summary>
    public bool TryWrite(ProtobufBuffer geometry)
    {
        var first = Settle();
        if (_count - first < 3 || DoubledArea(first) <= 0)
            return false;
        geometry.Varint(TileFields.Command(TileFields.MoveTo, 1));
        geometry.Zigzag(_x[first]);
        geometry.Zigzag(_y[first]);
        geometry.Varint(TileFields.Command(TileFields.LineTo, _count - first - 1));
        for (var i = first + 1; i < _count; i++)
        {
            geometry.Zigzag(_x[i] - _x[i - 1]);
            geometry.Zigzag(_y[i] - _y[i - 1]);
        }

        geometry.Varint(TileFields.Command(TileFields.ClosePath, 1));
        return true;
    }

    /// <summary>Mends the seam where the ring closes and returns the index of the first point that stays.</summary>
    private int Settle()
    {
        var first = 0;
        while (_count - first >= 3)
        {
            if (IsNeedless(_count - 1, _x[first], _y[first]))
                _count--;
            else if (IsOnOneLine(_count - 1, first, _x[first + 1], _y[first + 1]))
                first++;
            else
                break;
        }

        return first;
    }

    /// <summary>True when the point at an index adds nothing between the one before it and the one given.</summary>
    private bool IsNeedless(int at, int x, int y) =>
        (_x[at] == x && _y[at] == y) || (at > 0 && IsOnOneLine(at - 1, at, x, y));

    private bool IsOnOneLine(int a, int b, int x, int y) =>
        (long)(_x[b] - _x[a]) * (y - _y[b]) == (long)(_y[b] - _y[a]) * (x - _x[b]);

    /// <summary>Twice the area by the surveyor's formula; positive when clockwise on the screen, where Y runs down.</summary>
    private long DoubledArea(int first)
    {
        long sum = 0;
        for (var i = first; i < _count; i++)
        {
            var next = i + 1 == _count ? first : i + 1;
            sum += (long)_x[i] * _y[next] - (long)_x[next] * _y[i];
        }

        return sum;
    }
}
