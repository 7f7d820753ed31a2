using System.Text;

namespace RangeMap.Records;

/// <summary>Splits the kept text of one row again.</summary>
public static class RowText
{
    /// <summary>The fields of the row without their quotes, or null when its quoting is broken.</summary>
    /// <param name="raw">A row as it stood in its file.</param>
    /// <param name="separator">The file's separator.</param>
    public static IReadOnlyList<string>? Split(string raw, char separator)
    {
        if (raw.Length == 0)
            return [""];
        using var bytes = new MemoryStream(Encoding.Unicode.GetBytes(raw), writable: false);
        var rows = new RowReader(new CharSource(bytes, TextEncoding.Utf16LittleEndian), RowLimits.Default) { Separator = separator };
        if (!rows.Read() || rows.Fault is not null || rows.Raw.Length != raw.Length)
            return null;
        var fields = new string[rows.Count];
        for (var i = 0; i < fields.Length; i++)
            fields[i] = rows[i].ToString();
        return fields;
    }
}
