namespace RangeMap.Grids;

/// <summary>The datums on which latitudes and longitudes of the region are found.</summary>
public enum GeodeticDatum
{
    /// <summary>WGS84 and ETRS89, which RangeMap treats as one.</summary>
    Wgs84,

    /// <summary>OSGB36 (EPSG:4277), of older British maps.</summary>
    Osgb36,

    /// <summary>ED50 (EPSG:4230), of older Channel Islands and continental maps and of charts.</summary>
    Ed50,

    /// <summary>TM75 (EPSG:4300), of Irish maps; TM65 gives the same results.</summary>
    Tm75,

    /// <summary>Amersfoort (EPSG:4289), of Dutch maps.</summary>
    Amersfoort,
}
