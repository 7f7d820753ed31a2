namespace RangeMap.Records;

/// <summary>How the characters of a file are written as bytes.</summary>
public enum TextEncoding
{
    /// <summary>UTF-8, with or without a byte order mark.</summary>
    Utf8,

    /// <summary>UTF-16, low byte first.</summary>
    Utf16LittleEndian,

    /// <summary>UTF-16, high byte first.</summary>
    Utf16BigEndian,

    /// <summary>Windows-1252, which holds all printable characters of ISO 8859-1.</summary>
    Windows1252,
}
