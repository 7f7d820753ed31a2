using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>Reads the names, codes and EPSG codes of grids.</summary>
internal static class GridSystemName
{
    /// <summary>What is wrong with a name that is not known.</summary>
    public const string WhyUnknown = "This is no grid that is known: write GB, IE, ITM, CI (ED50), CI-WGS84, RD, EU or the grid's EPSG code, or leave it empty.";

    private static readonly Dictionary<string, GridId>.AlternateLookup<ReadOnlySpan<char>> Known =
        Names(
            (GridId.British, ["GB", "BNG", "OSGB", "OSGB36", "British National Grid", "British", "National Grid", "EPSG:27700", "27700"]),
            (GridId.Irish, ["IE", "IG", "TM75", "TM65", "Irish Grid", "Irish National Grid", "Irish", "EPSG:29903", "29903", "EPSG:29902", "29902"]),
            (GridId.IrishTransverseMercator, ["ITM", "Irish Transverse Mercator", "EPSG:2157", "2157"]),
            (GridId.ChannelIslands, ["CI", "CI-ED50", "Channel Islands", "EPSG:23030", "23030"]),
            (GridId.ChannelIslandsWgs84, ["CI-WGS84"]),
            (GridId.Dutch, ["RD", "RD New", "EPSG:28992", "28992"]),
            (GridId.European, ["EU", "ETRS89-LAEA", "LAEA", "EPSG:3035", "3035"]),
            (GridId.UtmNorth, ["UTM", "UTM-N", "MGRS", "EPSG:32600", "32600"]));

    /// <summary>The grid, or null.</summary>
    public static GridId? Read(ReadOnlySpan<char> text) => Known.TryGetValue(text, out var grid) ? grid : null;

    private static Dictionary<string, GridId>.AlternateLookup<ReadOnlySpan<char>> Names(params (GridId Grid, string[] Names)[] known) =>
        known.SelectMany(k => k.Names.Select(name => (name, k.Grid))).ToDictionary(k => k.name, k => k.Grid, StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();
}
