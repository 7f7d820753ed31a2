using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace RangeMap.Maps;

/// <summary>
/// Tells the language of a PDF document, which readers aloud need and SkiaSharp cannot write. It is added as an incremental update
/// (ISO 32000-1, 7.5.6): the catalogue once more with a Lang entry, and a cross-reference section that points to it.
/// </summary>
internal static partial class PdfLanguage
{
    /// <summary>The document with its language.</summary>
    /// <param name="pdf">A document with a plain cross-reference table, as SkiaSharp writes it.</param>
    /// <param name="language">Language tag, such as en-GB.</param>
    /// <exception cref="FormatException">The document has no catalogue that can be found.</exception>
    public static byte[] Add(ReadOnlySpan<byte> pdf, string language)
    {
        // Latin-1 keeps every byte a character, so that places in the text are places in the file.
        var text = Encoding.Latin1.GetString(pdf);
        var trailer = Trailer().Match(text, Math.Max(0, text.LastIndexOf("\ntrailer", StringComparison.Ordinal)));
        if (!trailer.Success)
            throw new FormatException("The PDF document has no trailer.");
        var root = trailer.Groups["root"].Value;
        var catalogue = text.LastIndexOf($"\n{root} 0 obj\n<<", StringComparison.Ordinal);
        if (catalogue < 0)
            throw new FormatException("The PDF document has no catalogue.");
        var dictionary = catalogue + $"\n{root} 0 obj\n<<".Length;
        var end = text.IndexOf("\nendobj", dictionary, StringComparison.Ordinal);

        var update = new StringBuilder("\n");
        var place = pdf.Length + update.Length;
        update.Append(CultureInfo.InvariantCulture, $"{root} 0 obj\n<</Lang ({language})\n{text[dictionary..end]}\nendobj\n");
        var table = pdf.Length + update.Length;
        update.Append(CultureInfo.InvariantCulture, $"xref\n0 1\n0000000000 65535 f \n{root} 1\n{place:0000000000} 00000 n \n");
        update.Append(CultureInfo.InvariantCulture, $"trailer\n<<{trailer.Groups["entries"].Value}\n/Prev {trailer.Groups["at"].Value}>>\nstartxref\n{table}\n%%EOF\n");
        return [.. pdf, .. Encoding.Latin1.GetBytes(update.ToString())];
    }

    [GeneratedRegex(@"\ntrailer\s*<<(?<entries>.*/Root (?<root>\d+) 0 R.*)>>\s*startxref\s+(?<at>\d+)\s+%%EOF", RegexOptions.Singleline)]
    private static partial Regex Trailer();
}
