namespace RangeMap.Grids;

/// <summary>Finds the national grid by number, by code or by place.</summary>
public static class NationalGrid
{
    private static readonly INationalGrid[] Grids =
    [
        new BritishNationalGrid(), new IrishGrid(), new ChannelIslandsEd50Grid(), new ChannelIslandsWgs84Grid(), new IrishTransverseMercatorGrid(),
        new EuropeanGrid(), new UtmGrid(north: true), new UtmGrid(north: false), new DutchGrid(),
    ];

    /// <summary>Every grid known, in the order of their numbers.</summary>
    public static IReadOnlyList<INationalGrid> All => Grids;

    /// <summary>The grid of a stored number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No grid has this number.</exception>
    public static INationalGrid Get(GridId id) =>
        id >= GridId.British && (int)id <= Grids.Length ? Grids[(int)id - 1] : throw new ArgumentOutOfRangeException(nameof(id), id, "No national grid has this number.");

    /// <summary>The grid of a code (<see cref="INationalGrid.Code"/>; capitals do not matter), or null when none has it.</summary>
    public static INationalGrid? Find(string code) => Array.Find(Grids, grid => string.Equals(grid.Code, code, StringComparison.OrdinalIgnoreCase));

    /// <summary>The grid in which a place is recorded: that of the land it lies on or nearest to. Null where that is of another country, and outside the lettered areas.</summary>
    /// <remarks>
    /// So at sea the grids part midway between the coasts, within 250 m. The Channel Islands get the ED50 grid, so that a place given as
    /// latitude and longitude meets the older WA and WV references on one map. At sea beyond the Irish and the Channel Islands letters the British grid is taken where it has some.
    /// </remarks>
    public static INationalGrid? ForPlace(LatLon place)
    {
        if (!(place.Latitude is > 48 and < 63 && place.Longitude is > -16 and < 6) || GridBoundaries.OfNearestLand(place) is not { } id)
            return null;
        var grid = Get(id);
        if (id != GridId.British && !grid.Contains(grid.FromLatLon(place)))
            grid = Get(GridId.British);
        return grid.Contains(grid.FromLatLon(place)) ? grid : null;
    }

    /// <summary>The grid of <see cref="ForPlace"/>, or UTM where that finds none; null only beyond 80 south and 84 north, or for what is no place.</summary>
    public static INationalGrid? ForPlaceAnywhere(LatLon place) =>
        ForPlace(place) ?? (UtmGrid.Covers(place) ? Get(place.Latitude < 0 ? GridId.UtmSouth : GridId.UtmNorth) : null);
}
