namespace RangeMap.Maps;

/// <summary>The formats of exports.</summary>
public enum ExportFormat
{
    /// <summary>Comma-separated values (RFC 4180).</summary>
    Csv = 0,

    /// <summary>The description of the CSV file (CSV on the Web).</summary>
    Csvw = 1,

    /// <summary>GeoJSON (RFC 7946).</summary>
    GeoJson = 2,

    /// <summary>OGC GeoPackage.</summary>
    GeoPackage = 3,

    /// <summary>GeoParquet 1.1.</summary>
    Parquet = 4,

    /// <summary>Darwin Core Archive.</summary>
    DarwinCoreArchive = 5,
}

/// <summary>Names, endings and media types of the formats.</summary>
public static class ExportFormats
{
    private static readonly (ExportFormat Format, string Word, string Ending, string MediaType)[] Known =
    [
        (ExportFormat.Csv, "csv", ".csv", PresenceCsv.MediaType),
        (ExportFormat.Csvw, "csvw", ".csv-metadata.json", "application/csvm+json"),
        (ExportFormat.GeoJson, "geojson", ".geojson", PresenceGeoJson.MediaType),
        (ExportFormat.GeoPackage, "gpkg", ".gpkg", "application/geopackage+sqlite3"),
        (ExportFormat.Parquet, "parquet", ".parquet", "application/vnd.apache.parquet"),
        (ExportFormat.DarwinCoreArchive, "dwca", ".zip", "application/zip"),
    ];

    /// <summary>The words by which formats are asked for.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Known.Select(known => known.Word)];

    /// <summary>The format of a word; null for any other word.</summary>
    public static ExportFormat? Find(string word)
    {
        foreach (var known in Known)
        {
            if (known.Word.Equals(word, StringComparison.OrdinalIgnoreCase))
                return known.Format;
        }

        return null;
    }

    /// <summary>The ending of its files.</summary>
    public static string Ending(this ExportFormat format) => Of(format).Ending;

    /// <summary>Its media type.</summary>
    public static string MediaType(this ExportFormat format) => Of(format).MediaType;

    /// <summary>Its word.</summary>
    public static string Word(this ExportFormat format) => Of(format).Word;

    private static (ExportFormat Format, string Word, string Ending, string MediaType) Of(ExportFormat format) => Known.First(known => known.Format == format);
}
