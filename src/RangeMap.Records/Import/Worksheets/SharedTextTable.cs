using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>The texts that the cells of a workbook share (ECMA-376 part 1, 18.4.9).</summary>
internal static partial class SharedTextTable
{
    /// <exception cref="ImportProblemException">There are more, or longer, texts than the limits allow.</exception>
    public static List<string> Read(FileBundle files, string part, FileLimits limits)
    {
        using var xml = UntrustedXml.Open(files, part, limits, limits.UnpackedBytes);
        var texts = new List<string>();
        var characters = 0L;
        while (xml.ReadStart())
        {
            if (xml.Element != "si")
                continue;
            var text = ReadRuns(xml, limits.SharedCharacters);
            characters += text.Length;
            if (characters > limits.SharedCharacters || texts.Count == limits.SharedTexts)
            {
                throw ContainerProblem.Of(
                    Invariant($"The workbook shares more than {limits.SharedTexts:N0} texts or {limits.SharedCharacters:N0} characters between its cells."), Invariant($"{part}, text {texts.Count + 1:N0}"),
                    "Save the sheet as CSV, UTF-8, which is read at any length.");
            }

            texts.Add(text);
        }

        return texts;
    }

    /// <summary>The text of the element at hand: its runs joined, without the phonetic guides. Afterwards the reader stands on its end.</summary>
    public static string ReadRuns(UntrustedXmlReader xml, long mostCharacters)
    {
        if (xml.IsEmpty)
            return "";
        var depth = xml.Depth;
        var text = new StringBuilder();
        while (xml.ReadInside(depth))
        {
            if (!xml.IsStart)
                continue;
            if (xml.Element == "rPh")
                xml.ReadContent();
            else if (xml.Element == "t" && text.Length <= mostCharacters)
                text.Append(xml.ReadContent());
        }

        return Unescape(text.ToString());
    }

    /// <summary>Characters that XML cannot hold stand as _x000D_ and the like (ECMA-376 part 1, 22.4.2.4); those that no text holds are left out.</summary>
    public static string Unescape(string text) =>
        text.Contains("_x", StringComparison.Ordinal)
            ? Escape().Replace(text, m => Shown((char)int.Parse(m.ValueSpan[2..6], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)))
            : text;

    private static string Shown(char c) => c is '\r' or '\n' or '\t' || (c >= ' ' && !char.IsSurrogate(c)) ? c.ToString() : "";

    [GeneratedRegex("_x[0-9A-Fa-f]{4}_")]
    private static partial Regex Escape();
}
