using System.Text;

namespace RangeMap.Records;

/// <summary>What a file is, as far as its first bytes tell.</summary>
internal enum FileForm
{
    /// <summary>Nothing speaks against text.</summary>
    Text,

    /// <summary>One file packed with gzip (RFC 1952).</summary>
    Gzip,

    /// <summary>A zip file: a workbook, an archive, or something else.</summary>
    Zip,

    /// <summary>Something that is known and not read.</summary>
    Refused,
}

/// <summary>Tells by its first bytes what a file is; its name does not count.</summary>
internal static class FileSignature
{
    /// <summary>Bytes that are enough to tell.</summary>
    public const int Length = 512;

    private const int TarMarkAt = 257;
    private const string SaveAsTable = "Save the table as CSV, UTF-8, or as .xlsx.";
    private const string Unpack = "Unpack it and import the table, or pack it as .gz or .zip.";

    private static readonly string[] MarkupBegins = ["<!DOCTYPE", "<html", "<?xml"];

    private static readonly (byte[] Mark, string What, string Mend)[] Refused =
    [
        ([0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1], "This is an old binary workbook (.xls), or a workbook protected by a password.", "Open it, take off the password, and save it as .xlsx or as CSV, UTF-8."),
        ("%PDF-"u8.ToArray(), "This is a PDF document.", SaveAsTable),
        ("SQLite format 3\0"u8.ToArray(), "This is a SQLite database or GeoPackage.", SaveAsTable),
        ("PAR1\x15"u8.ToArray(), "This is a Parquet file.", SaveAsTable),
        ("Rar!\x1A\x07"u8.ToArray(), "This is a RAR file.", Unpack),
        ([0x37, 0x7A, 0xBC, 0xAF, 0x27, 0x1C], "This is a 7z file.", Unpack),
        ("BZh91AY"u8.ToArray(), "This is a bzip2 file.", Unpack),
        ([0xFD, 0x37, 0x7A, 0x58, 0x5A, 0x00], "This is an xz file.", Unpack),
        ([0x28, 0xB5, 0x2F, 0xFD], "This is a zstd file.", Unpack),
        ([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A], "This is a picture.", SaveAsTable),
        ([0xFF, 0xD8, 0xFF], "This is a picture.", SaveAsTable),
        (@"{\rtf"u8.ToArray(), "This is a text document (RTF).", SaveAsTable),
    ];

    /// <summary>The form; for what is not read also the reason and the mend.</summary>
    public static FileForm Of(ReadOnlySpan<byte> first, out string what, out string mend)
    {
        (what, mend) = ("", "");
        if (first.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]))
            return FileForm.Gzip;
        if (first.StartsWith("PK\x03\x04"u8) || first.StartsWith("PK\x05\x06"u8) || first.StartsWith("PK\x07\x08"u8))
            return FileForm.Zip;
        foreach (var refused in Refused)
        {
            if (!first.StartsWith(refused.Mark))
                continue;
            (_, what, mend) = refused;
            return FileForm.Refused;
        }

        if (first.Length > TarMarkAt && first[TarMarkAt..].StartsWith("ustar"u8))
            (what, mend) = ("This is a tar file.", Unpack);
        else if (IsMarkup(first))
            (what, mend) = ("This is a web page or XML document, not a table.", SaveAsTable);
        return what.Length == 0 ? FileForm.Text : FileForm.Refused;
    }

    private static bool IsMarkup(ReadOnlySpan<byte> first)
    {
        var begin = Encoding.Latin1.GetString(first.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? first[3..] : first).TrimStart();
        return MarkupBegins.Any(mark => begin.StartsWith(mark, StringComparison.OrdinalIgnoreCase));
    }
}
