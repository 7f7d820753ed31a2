using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;

namespace RangeMap.Server;

/// <summary>A recorder's sheet as a page to read, print or send: no script, nothing from elsewhere.</summary>
internal static class RecorderSheetHtml
{
    private const string Style = """
        :root{color-scheme:light dark}body{font:16px/1.5 system-ui,sans-serif;max-width:60rem;margin:2rem auto;padding:0 1rem}
        h1{font-size:1.5rem}article{border-top:1px solid color-mix(in srgb,currentColor 25%,transparent);padding:.75rem 0}
        h2{font-size:1.05rem;margin:0}p{margin:.25rem 0}.facts,.small{opacity:.75}.decision{font-weight:600}
        @media print{body{margin:0;max-width:none}article{break-inside:avoid}}
        """;

    /// <summary>Writes the sheet.</summary>
    public static async Task WriteAsync(Stream to, RecorderSheet sheet)
    {
        await using var writer = new StreamWriter(to, new UTF8Encoding(false), leaveOpen: true);
        var name = Text(sheet.Recorder);
        await writer.WriteAsync($"<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>Records of {name}</title><style>{Style}</style></head>\n<body><h1>Records of {name}</h1>\n");
        await writer.WriteAsync("<p>Thank you for your records. Those that we have a question about, or have decided on, come first. A question is no reproach: rare finds raise it as often as slips do.</p>\n");
        await writer.WriteAsync(string.Create(CultureInfo.InvariantCulture, $"<p class=\"small\">State of the data: edition {sheet.Edition.Number}, {Text(sheet.Edition.MadeAt)}.</p>\n"));
        foreach (var line in sheet.Lines())
            await writer.WriteAsync(ArticleOf(line));
        await writer.WriteAsync("</body></html>\n");
    }

    private static string ArticleOf(SheetLine line)
    {
        var html = new StringBuilder($"<article><h2><em>{Text(line.Taxon)}</em>{(line.SentTaxon is null ? "" : $" <span class=\"small\">(sent as <em>{Text(line.SentTaxon)}</em>)</span>")}</h2>\n");
        html.Append(CultureInfo.InvariantCulture, $"<p class=\"facts\">{Text(string.Join(" · ", Facts(line)))}</p>\n");
        foreach (var doubt in line.Doubts)
            html.Append(CultureInfo.InvariantCulture, $"<p>{Text(doubt.Paragraph)}</p>\n");
        if (line.DecisionWords.Length > 0)
            html.Append(CultureInfo.InvariantCulture, $"<p class=\"decision\">{Text(line.DecisionWords)}</p>\n");
        return html.Append("</article>\n").ToString();
    }

    private static IEnumerable<string> Facts(SheetLine line)
    {
        var record = line.Record;
        yield return record.Square.ToString();
        yield return record.Dates.IsOneDay ? Day(record.Dates.First) : $"{Day(record.Dates.First)} to {Day(record.Dates.Last)}";
        if (!record.Present)
            yield return "looked for and not found";
        foreach (var fact in (string?[])[record.Stage, record.Sex, record.Site, record.Host])
        {
            if (!string.IsNullOrEmpty(fact))
                yield return fact;
        }
    }

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    private static string Text(string text) => HtmlEncoder.Default.Encode(text);
}
