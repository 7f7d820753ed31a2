using System.Collections.Frozen;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>The centres of towns as a gazetteer gives them, found by their point to the fourth decimal of a degree, about 10 m.</summary>
public sealed class TownCentres
{
    private readonly FrozenDictionary<long, string> _names;

    /// <summary>Remembers the centres; of two towns at one point the first counts.</summary>
    public TownCentres(IEnumerable<(string Name, LatLon Centre)> towns) =>
        _names = towns.DistinctBy(t => PointKey(t.Centre)).ToFrozenDictionary(t => PointKey(t.Centre), t => t.Name);

    /// <summary>The town whose centre is this point; null if there is none.</summary>
    public string? At(LatLon point) => _names.GetValueOrDefault(PointKey(point));

    private static long PointKey(LatLon point) => (long)Math.Round(point.Latitude * 1e4) << 32 | (uint)(int)Math.Round(point.Longitude * 1e4);
}
