using System.Collections.Concurrent;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>
/// Outlines of squares, projected once and kept: the same squares are drawn for taxon after taxon, and projecting is the
/// dear part of drawing. Safe for use by many threads.
/// </summary>
/// <typeparam name="TPoint">The kind of point, on a plane or in degrees.</typeparam>
/// <param name="draw">Makes the outline: a closed ring, anticlockwise with north up.</param>
public sealed class OutlineStore<TPoint>(Func<Square, TPoint[]> draw)
{
    /// <summary>Outlines kept at most; squares beyond this number are drawn anew each time. Some 20 MB.</summary>
    public const int MostKept = 100_000;

    private readonly ConcurrentDictionary<long, TPoint[]> _kept = new();
    private int _count;

    /// <summary>The outline of a square; callers must not change it.</summary>
    public TPoint[] Of(Square square)
    {
        if (_kept.TryGetValue(square.Code, out var outline))
            return outline;
        outline = draw(square);
        if (Volatile.Read(ref _count) < MostKept && _kept.TryAdd(square.Code, outline))
            Interlocked.Increment(ref _count);
        return outline;
    }
}
