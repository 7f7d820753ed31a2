namespace RangeMap.Grids;

/// <summary>The grids on which the countries of the region give eastings and northings, and where each grid is in use.</summary>
internal static class CountryGrids
{
    /// <summary>All grids on which bare eastings and northings can be meant.</summary>
    public static IReadOnlyList<INationalGrid> Any { get; } =
        Grids(GridId.British, GridId.Irish, GridId.IrishTransverseMercator, GridId.ChannelIslands, GridId.Dutch, GridId.European);

    /// <summary>The grids of a country (ISO 3166-1 two-letter code, any case); null for one that is not known here. GB is the United Kingdom, with Northern Ireland on the Irish grids.</summary>
    public static IReadOnlyList<INationalGrid>? Of(string country, bool channelIslandsWgs84) => country.Trim().ToUpperInvariant() switch
    {
        "GB" => Grids(GridId.British, GridId.Irish, GridId.IrishTransverseMercator),
        "IM" => Grids(GridId.British),
        "IE" => Grids(GridId.Irish, GridId.IrishTransverseMercator),
        "GG" or "JE" => Grids(channelIslandsWgs84 ? GridId.ChannelIslandsWgs84 : GridId.ChannelIslands),
        "NL" => Grids(GridId.Dutch),
        _ => null,
    };

    /// <summary>True where places with this easting and northing are recorded on the grid: not in the parts of its plane that belong to another.</summary>
    public static bool IsRecordedOn(INationalGrid grid, EastNorth point)
    {
        if (!grid.Contains(point))
            return false;
        var home = NationalGrid.ForPlace(grid.ToLatLon(point))?.Id;
        return grid.Id switch
        {
            GridId.British or GridId.Irish => home == grid.Id,
            GridId.IrishTransverseMercator => home == GridId.Irish,
            GridId.ChannelIslands or GridId.ChannelIslandsWgs84 => home == GridId.ChannelIslands,
            _ => true,
        };
    }

    private static INationalGrid[] Grids(params GridId[] ids) => [.. ids.Select(NationalGrid.Get)];
}
