using System.Collections.Concurrent;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>
/// A region of <see cref="KnownRegions"/>. One rule everywhere: a square belongs to every region that reaches into it, so that a square on a border belongs to
/// those on both sides.
/// </summary>
/// <param name="name">Its name, as it was loaded.</param>
/// <param name="polygons">Its polygons.</param>
internal sealed class NamedRegion(string name, IReadOnlyList<GeoPolygon> polygons)
{
    private const int MostKept = 200_000;

    private readonly NamedAreas _area = NamedAreas.Of(name, polygons);
    private readonly ConcurrentDictionary<long, bool> _known = new();
    private int _kept;

    /// <summary>Its name, as it was loaded.</summary>
    public string Name => name;

    /// <summary>Its polygons.</summary>
    public IReadOnlyList<GeoPolygon> Polygons => polygons;

    /// <summary>True when the region reaches into the square: into the largest circle within it, or over a corner.</summary>
    public bool Holds(Square square)
    {
        if (_known.TryGetValue(square.Code, out var holds))
            return holds;
        if (Interlocked.Increment(ref _kept) > MostKept)
        {
            _kept = 0;
            _known.Clear();
        }

        return _known[square.Code] = _area.KmOutside(name, square) == 0;
    }
}
