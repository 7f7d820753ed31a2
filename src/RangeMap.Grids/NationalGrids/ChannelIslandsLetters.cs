namespace RangeMap.Grids;

/// <summary>The two lettered squares of UTM zone 30 that hold the Channel Islands: WV (Guernsey, Jersey, Sark) and WA north of it (Alderney).</summary>
internal static class ChannelIslandsLetters
{
    private const int West = 500_000, South = 5_400_000, Side = 100_000;

    /// <summary>True in WA or WV.</summary>
    public static bool Contain(EastNorth point) =>
        point.Easting is >= West and < West + Side && point.Northing is >= South and < South + 2 * Side;

    /// <summary>WA, WV or null.</summary>
    public static string? At(EastNorth point) => !Contain(point) ? null : point.Northing < South + Side ? "WV" : "WA";

    /// <summary>The corner of the square of two capital letters; false for any but WA and WV.</summary>
    public static bool TryFindCorner(char first, char second, out int easting, out int northing)
    {
        easting = West;
        northing = second == 'A' ? South + Side : South;
        return first == 'W' && second is 'A' or 'V';
    }
}
