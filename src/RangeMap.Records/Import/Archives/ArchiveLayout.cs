using System.Globalization;

namespace RangeMap.Records;

/// <summary>Reads how the files of a table are laid out from the attributes of a core or extension.</summary>
internal static class ArchiveLayout
{
    private const int MostHeaderLines = 1_000;

    /// <summary>A table without files and fields.</summary>
    /// <param name="xml">Stands on the element.</param>
    /// <param name="problem">Makes the problem of what cannot be followed, from what and how to mend it.</param>
    public static ArchiveTable Of(UntrustedXmlReader xml, Func<string, string, ImportProblemException> problem)
    {
        // A tab or line feed that stands in the attribute as itself reaches us as a space: XML 1.0, 3.3.3.
        var separator = Unescape(xml.Attribute("fieldsTerminatedBy") switch { null => ",", " " => "\t", var stated => stated });
        var quote = Unescape(xml.Attribute("fieldsEnclosedBy") ?? "\"");
        var lineEnd = Unescape(xml.Attribute("linesTerminatedBy") switch { null or " " or "  " => "\n", var stated => stated });
        if (separator.Length != 1)
            throw problem($"Fields end with \"{separator}\".", "One character between fields can be read.");
        if (quote.Length > 1)
            throw problem($"Fields are enclosed by \"{quote}\".", "One character, or none, can be read.");
        if (lineEnd.Length != 1 && lineEnd != "\r\n")
            throw problem("Rows end with several characters.", "A line end or one other character can be read.");
        return new()
        {
            RowType = xml.Attribute("rowType")?.Trim() ?? "",
            Files = [],
            Fields = [],
            Encoding = EncodingOf(xml.Attribute("encoding"), problem),
            Separator = separator[0],
            Dialect = new(quote.Length == 0 || quote[0] == separator[0] ? null : quote[0], lineEnd[^1]),
            HeaderLines = HeaderLinesOf(xml.Attribute("ignoreHeaderLines"), problem),
            DateOrder = OrderOf(xml.Attribute("dateFormat")),
        };
    }

    /// <summary>The guide writes tab, line feed, carriage return and backslash as two characters each.</summary>
    private static string Unescape(string text) =>
        text.Replace(@"\\", "\u0001", StringComparison.Ordinal).Replace(@"\t", "\t", StringComparison.Ordinal).Replace(@"\n", "\n", StringComparison.Ordinal)
            .Replace(@"\r", "\r", StringComparison.Ordinal).Replace("\u0001", @"\", StringComparison.Ordinal);

    private static TextEncoding? EncodingOf(string? name, Func<string, string, ImportProblemException> problem)
    {
        switch ((name ?? "UTF-8").Trim().ToUpperInvariant().Replace("_", "-", StringComparison.Ordinal))
        {
            case "UTF-8" or "UTF8" or "US-ASCII" or "ASCII" or "":
                return TextEncoding.Utf8;
            case "UTF-16LE":
                return TextEncoding.Utf16LittleEndian;
            case "UTF-16BE":
                return TextEncoding.Utf16BigEndian;
            case "UTF-16" or "UTF16" or "UNICODE":
                return null;
            case "ISO-8859-1" or "ISO8859-1" or "LATIN1" or "LATIN-1" or "WINDOWS-1252" or "CP1252" or "CP-1252":
                return TextEncoding.Windows1252;
            default:
                throw problem($"The encoding \"{name}\" is not known.", "UTF-8, UTF-16, ISO-8859-1 and windows-1252 can be read.");
        }
    }

    private static int HeaderLinesOf(string? text, Func<string, string, ImportProblemException> problem)
    {
        if (string.IsNullOrWhiteSpace(text))
            return 0;
        return int.TryParse(text, NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var lines) && lines <= MostHeaderLines
            ? lines
            : throw problem($"ignoreHeaderLines is \"{text}\".", "It must be a small whole number.");
    }

    /// <summary>DDMMYYYY, DD-MM-YYYY, MM/DD/YYYY and the like tell the order of day and month; other formats need no order.</summary>
    private static DateOrder OrderOf(string? format) => format?.TrimStart() switch
    {
        ['D' or 'd', ..] => DateOrder.DayFirst,
        ['M' or 'm', ..] => DateOrder.MonthFirst,
        _ => DateOrder.NotStated,
    };
}
