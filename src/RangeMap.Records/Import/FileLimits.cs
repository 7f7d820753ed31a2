namespace RangeMap.Records;

/// <summary>How much a packed file may hold, so that a small file cannot fill the memory or the disk.</summary>
public sealed record FileLimits
{
    /// <summary>Bytes that a gzip file, or one entry of a zip file, may unpack to: 20 GB.</summary>
    public long UnpackedBytes { get; init; } = 20_000_000_000;

    /// <summary>How many times its packed size an entry may unpack to, once it exceeds <see cref="UnpackedBytesBeforeRatio"/>.</summary>
    public int UnpackedRatio { get; init; } = 300;

    /// <summary>Bytes that may be unpacked at any ratio: 64 MB.</summary>
    public long UnpackedBytesBeforeRatio { get; init; } = 64_000_000;

    /// <summary>Entries of a zip file, or files of a folder.</summary>
    public int Entries { get; init; } = 1_000;

    /// <summary>Bytes of the descriptions in a zip file of its entries: 1 MB.</summary>
    public long ZipDirectoryBytes { get; init; } = 1_000_000;

    /// <summary>Characters of all the texts that a workbook shares between its cells: 64 million.</summary>
    public long SharedCharacters { get; init; } = 64_000_000;

    /// <summary>Number of texts that a workbook shares between its cells.</summary>
    public int SharedTexts { get; init; } = 4_000_000;

    /// <summary>Characters of the events of an archive, which are held in memory while its occurrences are read: 100 million.</summary>
    public long EventCharacters { get; init; } = 100_000_000;

    /// <summary>Number of events of an archive.</summary>
    public int Events { get; init; } = 2_000_000;

    /// <summary>Occurrences for which the rows of one extension are held in memory: 2 million. Further rows are left and counted.</summary>
    public int ExtensionOccurrences { get; init; } = 2_000_000;

    /// <summary>Bytes of what the rows of one extension tell that are held in memory: 100 MB. Further rows are left and counted.</summary>
    public long ExtensionBytes { get; init; } = 100_000_000;

    /// <summary>Bytes of meta.xml, of eml.xml and of the parts of a workbook that describe it: 32 MB.</summary>
    public long DescriptionBytes { get; init; } = 32_000_000;

    /// <summary>Bytes of a single tag or text of an XML file: 16 MB.</summary>
    public long XmlPieceBytes { get; init; } = 16_000_000;

    /// <summary>The limits stated beside each.</summary>
    public static FileLimits Default { get; } = new();
}
