using System.Globalization;

namespace RangeMap.Grids;

/// <summary>The letters of the military grid (MGRS) on WGS84: bands of 8 degrees, columns and rows of 100 km (NGA.STND.0037, "Universal grids and grid reference systems").</summary>
internal static class MgrsLetters
{
    private const string Bands = "CDEFGHJKLMNPQRSTUVWX";
    private const string Columns = "ABCDEFGHJKLMNPQRSTUVWXYZ", Rows = "ABCDEFGHJKLMNPQRSTUV";
    private const int Side = 100_000, Cycle = 2_000_000, FirstNorthern = 10, RowShiftOfEvenZones = 5;

    private static readonly (double South, double North)[] BandNorthings = [.. Enumerable.Range(0, Bands.Length).Select(FindNorthings)];

    /// <summary>True for C to X without I and O.</summary>
    public static bool IsBand(char letter) => Bands.Contains(letter);

    /// <summary>True for the bands north of the equator, N to X.</summary>
    public static bool IsNorthern(char band) => band >= 'N';

    /// <summary>True when a northing can lie in a band.</summary>
    public static bool IsInBand(char band, double northing) =>
        BandNorthings[Bands.IndexOf(band)] is var (south, north) && northing >= south && northing <= north;

    /// <summary>The name of the 100 km square: zone, band, column, row, such as 30UXC.</summary>
    /// <param name="zone">1 to 60.</param>
    /// <param name="easting">Within the zone, metres, [100 km, 900 km).</param>
    /// <param name="northing">Metres.</param>
    /// <param name="latitude">Degrees, of the middle of the square: a square that lies in two bands has the name of that one, but is read under both.</param>
    /// <param name="north">The hemisphere of the plane.</param>
    public static string At(int zone, int easting, int northing, double latitude, bool north)
    {
        var band = north ? Math.Clamp((int)((latitude + 80) / 8), FirstNorthern, Bands.Length - 1) : Math.Clamp((int)((latitude + 80) / 8), 0, FirstNorthern - 1);
        if (!HasBand(zone, Bands[band]))
            band--;
        var column = Columns[(zone - 1) % 3 * 8 + easting / Side - 1];
        var row = Rows[(northing % Cycle / Side + (zone % 2 == 0 ? RowShiftOfEvenZones : 0)) % Rows.Length];
        return string.Create(CultureInfo.InvariantCulture, $"{zone}{Bands[band]}{column}{row}");
    }

    /// <summary>False for 32X, 34X and 36X, which Svalbard's wide zones leave no room for.</summary>
    public static bool HasBand(int zone, char band) => band != 'X' || zone is not (32 or 34 or 36);

    /// <summary>The corner of a 100 km square, easting within the zone; false when the zone has no such column, or the band no such row.</summary>
    public static bool TryFindCorner(int zone, char band, char column, char row, out int easting, out int northing)
    {
        int c = Columns.IndexOf(column) - (zone - 1) % 3 * 8, r = Rows.IndexOf(row);
        (easting, northing) = ((c + 1) * Side, 0);
        if (c is < 0 or > 7 || r < 0)
            return false;
        var (south, north) = BandNorthings[Bands.IndexOf(band)];
        northing = (r + (zone % 2 == 0 ? Rows.Length - RowShiftOfEvenZones : 0)) % Rows.Length * Side;
        while (northing + Side <= south)
            northing += Cycle;
        return northing < north;
    }

    /// <summary>The least and greatest northing of a band, at the central meridian or 6 degrees from it (where the widest zones end).</summary>
    private static (double South, double North) FindNorthings(int band)
    {
        var northern = band >= FirstNorthern;
        double south = -80 + 8 * band, north = band == Bands.Length - 1 ? 84 : south + 8;
        return (
            Math.Min(UtmGrid.NorthingOf(south, 0, northern), UtmGrid.NorthingOf(south, 6, northern)),
            Math.Max(UtmGrid.NorthingOf(north, 0, northern), UtmGrid.NorthingOf(north, 6, northern)));
    }
}
