using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>The outlines of squares on a plane and in latitude and longitude, each projected once per process.</summary>
internal static class Outlines
{
    private static readonly Dictionary<string, OutlineStore<EastNorth>> OnPlanes =
        TileMatrixSet.All.ToDictionary(set => set.Id, set => new OutlineStore<EastNorth>(square => SquareOutline.On(square, set.Plane)));

    /// <summary>Outlines in degrees.</summary>
    public static OutlineStore<LatLon> InLatLon { get; } = new(SquareOutline.InLatLon);

    /// <summary>Outlines on the plane of a tile matrix set, metres.</summary>
    public static OutlineStore<EastNorth> On(TileMatrixSet set) => OnPlanes[set.Id];
}
