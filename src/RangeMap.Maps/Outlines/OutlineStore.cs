using System.Collections.Concurrent;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>
/// Outlines of squares, made once and kept: the same squares are drawn for taxon after taxon, and projecting is the dear
/// part of drawing. Safe for use by many threads.
/// </summary>
/// <typeparam name="TPart">What an outline is made of: points on a plane or in degrees, or bytes of a written form.</typeparam>
/// <param name="draw">Makes the outline: a closed ring, anticlockwise with north up.</param>
internal sealed class OutlineStore<TPart>(Func<Square, TPart[]> draw)
{
    /// <summary>Outlines kept at most; squares beyond this number are drawn anew each time. Some 30 MB a store.</summary>
    public const int MostKept = 100_000;

    private readonly ConcurrentDictionary<long, TPart[]> _kept = new();
    private int _count;

    /// <summary>The outline of a square; callers must not change it.</summary>
    public TPart[] Of(Square square)
    {
        if (_kept.TryGetValue(square.Code, out var outline))
            return outline;
        outline = draw(square);
        if (Volatile.Read(ref _count) < MostKept && _kept.TryAdd(square.Code, outline))
            Interlocked.Increment(ref _count);
        return outline;
    }
}
