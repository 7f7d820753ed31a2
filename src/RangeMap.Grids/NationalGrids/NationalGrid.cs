namespace RangeMap.Grids;

/// <summary>Finds the national grid by number, by code or by place.</summary>
public static class NationalGrid
{
    /// <summary>Every grid known.</summary>
    public static IReadOnlyList<INationalGrid> All => throw new NotSupportedException();

    /// <summary>The grid of a stored number.</summary>
    public static INationalGrid Get(GridId id) => throw new NotSupportedException();

    /// <summary>The grid in which a place is recorded: Irish on the island of Ireland, Channel Islands round those, British elsewhere; null outside all.</summary>
    public static INationalGrid? ForPlace(LatLon place) => throw new NotSupportedException();
}
