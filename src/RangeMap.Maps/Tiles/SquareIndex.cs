using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>
/// Finds the boxes near a part of the plane. The plane is divided into equal buckets no smaller than the largest box, each
/// box belongs to the bucket of its middle, and boxes stand in the order of their buckets, so that one row of
/// buckets is one run of boxes.
/// </summary>
internal sealed class SquareIndex
{
    private readonly PlaneBounds _all;
    private readonly double _bucketSide;
    private readonly int _columns;
    private readonly int _rows;
    private readonly int[] _starts;

    public SquareIndex(ReadOnlySpan<PlaneBounds> boxes)
    {
        _all = boxes.Length == 0 ? default : boxes[0];
        double largest = 0;
        foreach (ref readonly var box in boxes)
        {
            _all = _all.Union(box);
            largest = Math.Max(largest, box.LongerSide());
        }

        // No smaller than the largest box, and about as many buckets as boxes.
        _bucketSide = Math.Max(Math.Max(largest, 1), Math.Sqrt(_all.Width() * _all.Height() / Math.Max(boxes.Length, 1)));
        _columns = (int)(_all.Width() / _bucketSide) + 1;
        _rows = (int)(_all.Height() / _bucketSide) + 1;
        (Order, _starts) = Sort(boxes);
    }

    /// <summary>The boxes' numbers in the order that <see cref="Rows"/> speaks of.</summary>
    public int[] Order { get; }

    /// <summary>Each run [from, to) of places in <see cref="Order"/> that may hold boxes overlapping an area.</summary>
    public RowEnumerator Rows(in PlaneBounds area)
    {
        // A box reaches at most half a bucket beyond the bucket of its middle.
        var reach = _bucketSide / 2;
        return new(
            this,
            Place(area.South - reach - _all.South, _rows),
            Place(area.North + reach - _all.South, _rows),
            Place(area.West - reach - _all.West, _columns),
            Place(area.East + reach - _all.West, _columns));
    }

    private int Place(double metres, int count) => (int)Math.Clamp(metres / _bucketSide, 0, count - 1);

    private (int[] Order, int[] Starts) Sort(ReadOnlySpan<PlaneBounds> boxes)
    {
        var buckets = new int[boxes.Length];
        var order = new int[boxes.Length];
        var starts = new int[_rows * _columns + 1];
        for (var i = 0; i < boxes.Length; i++)
        {
            var middle = boxes[i].Middle();
            var row = Place(middle.Northing - _all.South, _rows);
            var column = Place(middle.Easting - _all.West, _columns);
            (buckets[i], order[i]) = (row * _columns + column, i);
            starts[buckets[i] + 1]++;
        }

        for (var bucket = 1; bucket < starts.Length; bucket++)
            starts[bucket] += starts[bucket - 1];
        var next = starts.AsSpan(0, starts.Length - 1).ToArray();
        for (var i = 0; i < boxes.Length; i++)
            order[next[buckets[i]]++] = i;
        return (order, starts);
    }

    /// <summary>The runs of one question, one a row of buckets.</summary>
    public struct RowEnumerator(SquareIndex index, int firstRow, int lastRow, int firstColumn, int lastColumn)
    {
        private int _row = firstRow - 1;

        public readonly (int From, int To) Current =>
            (index._starts[_row * index._columns + firstColumn], index._starts[_row * index._columns + lastColumn + 1]);

        public readonly RowEnumerator GetEnumerator() => this;

        public bool MoveNext() => ++_row <= lastRow;
    }
}
