using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>What a geodeticDatum cell says of the datum of latitude and longitude.</summary>
/// <param name="IsStated">False for an empty cell: then WGS84 is taken, and said.</param>
/// <param name="Known">The datum; null where none is stated or its name is not known: then WGS84 is taken with a wider circle, and said.</param>
internal readonly record struct StatedDatum(bool IsStated, GeodeticDatum? Known);

/// <summary>Reads the names and EPSG codes of datums.</summary>
internal static class DatumName
{
    private static readonly Dictionary<string, GeodeticDatum>.AlternateLookup<ReadOnlySpan<char>> Known =
        Names(
            (GeodeticDatum.Wgs84, ["WGS84", "WGS 84", "WGS-84", "WGS_84", "WGS1984", "WGS 1984", "WGS_1984", "World Geodetic System 1984", "EPSG:4326", "EPSG:4979", "4326", "4979"]),
            (GeodeticDatum.Wgs84, ["ETRS89", "ETRS 89", "EPSG:4258", "4258", "IRENET95", "EPSG:4173", "4173"]), // IRENET95 realises ETRS89 in Ireland
            (GeodeticDatum.Osgb36, ["OSGB36", "OSGB 36", "OSGB1936", "OSGB 1936", "EPSG:4277", "4277"]),
            (GeodeticDatum.Ed50, ["ED50", "ED 50", "European Datum 1950", "EPSG:4230", "4230"]),
            (GeodeticDatum.Tm75, ["TM75", "TM 75", "EPSG:4300", "4300", "TM65", "TM 65", "EPSG:4299", "4299", "Ireland 1965"]),
            (GeodeticDatum.Amersfoort, ["Amersfoort", "EPSG:4289", "4289"]));

    public static StatedDatum Read(ReadOnlySpan<char> text) => new(!text.IsEmpty, Known.TryGetValue(text, out var datum) ? datum : null);

    private static Dictionary<string, GeodeticDatum>.AlternateLookup<ReadOnlySpan<char>> Names(params (GeodeticDatum Datum, string[] Names)[] known) =>
        known.SelectMany(k => k.Names.Select(name => (name, k.Datum))).ToDictionary(k => k.name, k => k.Datum, StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();
}
