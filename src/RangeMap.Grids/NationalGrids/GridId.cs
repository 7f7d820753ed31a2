namespace RangeMap.Grids;

/// <summary>The national grids that records are placed on. The numbers are stored in databases and never change.</summary>
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
}
