namespace RangeMap.Grids;

/// <summary>The grids that records are placed on. The numbers are stored in databases and never change.</summary>
public enum GridId : byte
{
    /// <summary>British National Grid (EPSG:27700): Great Britain and the Isle of Man.</summary>
    British = 1,

    /// <summary>Irish Grid (TM75, EPSG:29903): the island of Ireland.</summary>
    Irish = 2,

    /// <summary>Channel Islands, UTM zone 30 letters WA and WV on ED50 (EPSG:23030), the datum of older references.</summary>
    ChannelIslands = 3,

    /// <summary>Channel Islands, UTM zone 30 letters WA and WV on WGS84 (EPSG:32630).</summary>
    ChannelIslandsWgs84 = 4,

    /// <summary>Irish Transverse Mercator (EPSG:2157): the island of Ireland in numbers, without letters.</summary>
    IrishTransverseMercator = 5,

    /// <summary>The European reference grid on ETRS89-LAEA (EPSG:3035).</summary>
    European = 6,

    /// <summary>UTM north of the equator, all zones side by side (EPSG:32600); squares are named as in the military grid (MGRS).</summary>
    UtmNorth = 7,

    /// <summary>UTM south of the equator, all zones side by side (EPSG:32700); squares are named as in the military grid (MGRS).</summary>
    UtmSouth = 8,

    /// <summary>Dutch RD New (EPSG:28992): the Netherlands in numbers, without letters.</summary>
    Dutch = 9,
}
