namespace RangeMap.Records;

/// <summary>What kind of file the records came in.</summary>
public enum FileKind
{
    /// <summary>Delimited text.</summary>
    DelimitedText,

    /// <summary>A sheet of an .xlsx workbook.</summary>
    Worksheet,

    /// <summary>A Darwin Core Archive with its description.</summary>
    Archive,
}

/// <summary>What a file turned out to be.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Words">The kind in words for people, such as "gzip of delimited text".</param>
/// <param name="Sheet">The sheet that was read; null for other kinds.</param>
/// <param name="Citation">What the file says of its origin; null where it says nothing.</param>
public sealed record FileDescription(FileKind Kind, string Words, string? Sheet = null, ArchiveCitation? Citation = null);
