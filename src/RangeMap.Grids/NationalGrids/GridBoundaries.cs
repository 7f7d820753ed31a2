using System.Globalization;

namespace RangeMap.Grids;

/// <summary>
/// The lines that part the national grids at sea: everywhere as far from the land on one side as from that on the other, within
/// 250 m. They touch no land. Read from gis-data/boundaries, which is made from the coasts.
/// </summary>
internal static class GridBoundaries
{
    private const string Foreign = "none";
    private static readonly ILookup<string, LatLon[]> Rings = Read();
    private static readonly BandedRings Irish = new([.. Rings["IE"]]), ChannelIslands = new([.. Rings["CI"]]), Others = new([.. Rings[Foreign]]);

    /// <summary>The grid of the nearest land; null where that is of another country. For places between 48 and 63 N, 16 W and 6 E.</summary>
    public static GridId? OfNearestLand(LatLon place) =>
        Irish.Contain(place) ? GridId.Irish
        : ChannelIslands.Contain(place) ? GridId.ChannelIslands
        : Others.Contain(place) ? null
        : GridId.British;

    private static ILookup<string, LatLon[]> Read()
    {
        using var stream = typeof(GridBoundaries).Assembly.GetManifestResourceStream("boundaries.csv") ?? throw new InvalidOperationException("The program was built without boundaries.csv.");
        using var reader = new StreamReader(stream);
        reader.ReadLine();
        var rows = new List<(string Region, string Ring, LatLon Place)>();
        while (reader.ReadLine() is { } line)
        {
            var fields = line.Split(',');
            rows.Add((fields[0], fields[1], new(Number(fields[2]), Number(fields[3]))));
        }

        return rows.GroupBy(row => (row.Region, row.Ring)).ToLookup(ring => ring.Key.Region, ring => ring.Select(row => row.Place).ToArray());
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
