namespace RangeMap.Records;

/// <summary>What a geodeticDatum cell means for reading latitude and longitude.</summary>
internal enum Datum
{
    /// <summary>Not stated: taken as WGS84, and said.</summary>
    NotStated,

    /// <summary>WGS84 or ETRS89, which differ by less than a metre.</summary>
    Wgs84,

    /// <summary>Another datum, or a name that is not known: taken as WGS84 with a wider circle, and said.</summary>
    Other,
}

/// <summary>Reads the names and EPSG codes of datums.</summary>
internal static class DatumName
{
    private static readonly Dictionary<string, Datum>.AlternateLookup<ReadOnlySpan<char>> Known =
        new Dictionary<string, Datum>(StringComparer.OrdinalIgnoreCase)
        {
            ["WGS84"] = Datum.Wgs84,
            ["WGS 84"] = Datum.Wgs84,
            ["WGS-84"] = Datum.Wgs84,
            ["WGS1984"] = Datum.Wgs84,
            ["World Geodetic System 1984"] = Datum.Wgs84,
            ["EPSG:4326"] = Datum.Wgs84,
            ["EPSG:4979"] = Datum.Wgs84,
            ["4326"] = Datum.Wgs84,
            ["ETRS89"] = Datum.Wgs84,
            ["EPSG:4258"] = Datum.Wgs84,
        }.GetAlternateLookup<ReadOnlySpan<char>>();

    public static Datum Read(ReadOnlySpan<char> text) =>
        text.IsEmpty ? Datum.NotStated : Known.TryGetValue(text, out var datum) ? datum : Datum.Other;
}
