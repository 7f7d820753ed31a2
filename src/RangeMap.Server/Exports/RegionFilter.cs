using RangeMap.Grids;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Tells which squares belong to a region: those that it holds or touches.</summary>
internal sealed class RegionFilter(DataFolder folder, string name)
{
    private readonly KnownRegions _regions = new(new RegionStore(folder.Database).ReadAll());
    private readonly Dictionary<long, bool> _known = [];

    /// <summary>The names of regions.</summary>
    public static IReadOnlyList<string> Known(DataFolder folder)
    {
        var nations = BaseGeography.Nations;
        return [.. new RegionStore(folder.Database).ReadAll().Select(region => region.Name), .. nations.Names];
    }

    /// <summary>True for squares of the region.</summary>
    public bool Holds(Square square)
    {
        if (!_known.TryGetValue(square.Code, out var holds))
            _known[square.Code] = holds = _regions.Covers(name, square) == true;
        return holds;
    }
}
