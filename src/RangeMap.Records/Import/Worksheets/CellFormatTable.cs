using System.Globalization;

namespace RangeMap.Records;

/// <summary>The cell formats of a workbook (ECMA-376 part 1, 18.8.10 and 18.8.30), as far as they tell days from numbers.</summary>
internal static class CellFormatTable
{
    private const int MostFormats = 100_000;

    public static List<CellFormat> Read(FileBundle files, string part, FileLimits limits)
    {
        using var xml = UntrustedXml.Open(files, part, limits, limits.DescriptionBytes);
        var custom = new Dictionary<int, CellFormat>();
        var formats = new List<CellFormat>();
        var inCellFormats = false;
        while (xml.Read())
        {
            if (xml.Element == "cellXfs")
                inCellFormats = xml.IsStart && !xml.IsEmpty;
            else if (xml.IsStart && xml.Element == "numFmt" && Number(xml.Attribute("numFmtId")) is { } id)
                custom[id] = OfCode(xml.Attribute("formatCode") ?? "");
            else if (xml.IsStart && inCellFormats && xml.Element == "xf" && formats.Count < MostFormats)
                formats.Add(Number(xml.Attribute("numFmtId")) is { } used ? custom.GetValueOrDefault(used, OfBuiltIn(used)) : CellFormat.Number);
        }

        return formats;
    }

    /// <summary>What a format code such as <c>dd/mm/yyyy;@</c> or <c>[h]:mm</c> makes of a number: the letters outside quotes and brackets tell.</summary>
    public static CellFormat OfCode(string code)
    {
        bool day = false, time = false;
        for (var i = 0; i < code.Length && code[i] != ';'; i++)
        {
            if (code[i] == '"')
                i = EndOf(code, '"', i);
            else if (code[i] == '[')
                i = EndOf(code, ']', i);
            else if (code[i] is '\\' or '_' or '*')
                i++;
            else if (code[i] is 'G' or 'g' && code.AsSpan(i).StartsWith("General", StringComparison.OrdinalIgnoreCase))
                i += "General".Length - 1;
            else if (code[i] is 'd' or 'D' or 'y' or 'Y')
                day = true;
            else if (code[i] is 'h' or 'H' or 's' or 'S')
                time = true;
            else if (code[i] is 'm' or 'M')
                day |= IsMonth(code, i);
        }

        return day ? CellFormat.Day : time || code.StartsWith("[h", StringComparison.OrdinalIgnoreCase) ? CellFormat.Time : CellFormat.Number;
    }

    /// <summary>A run of m is minutes when hours stand before it or seconds after it, else the month.</summary>
    private static bool IsMonth(string code, int at)
    {
        var before = code[..at].TrimEnd('m', 'M', ':', ' ', ']');
        var after = code[at..].TrimStart('m', 'M', ':', ' ');
        return !before.EndsWith('h') && !before.EndsWith('H') && !after.StartsWith('s') && !after.StartsWith('S');
    }

    private static int EndOf(string code, char mark, int from) => code.IndexOf(mark, from + 1) is var at and >= 0 ? at : code.Length;

    /// <summary>The numbers below 164 are formats that need no code; 27 to 36 and 50 to 58 are days in East Asian editions.</summary>
    private static CellFormat OfBuiltIn(int id) => id switch
    {
        >= 14 and <= 17 or 22 or (>= 27 and <= 31) or 36 or (>= 50 and <= 58) => CellFormat.Day,
        (>= 18 and <= 21) or (>= 32 and <= 35) or (>= 45 and <= 47) => CellFormat.Time,
        _ => CellFormat.Number,
    };

    private static int? Number(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
