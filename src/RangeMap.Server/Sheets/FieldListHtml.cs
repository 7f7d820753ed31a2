using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>The species of a square as a page to take into the field: it needs no script and no network, and leaves room to write.</summary>
internal static class FieldListHtml
{
    private const int RowsForOthers = 8;

    private const string Caution =
        "A list is no permission: ask before you enter land, keep to paths, tell somebody where you go, and leave what you find where it is unless you hold a licence.";

    /// <summary>Writes the list.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="answer">The square.</param>
    /// <param name="known">What may be missing there.</param>
    /// <param name="weeks">Tells when to look for a taxon; empty where it is not known.</param>
    /// <param name="state">The state of the data.</param>
    /// <param name="notice">What a reader must be told about the data; null for nothing.</param>
    public static async Task WriteAsync(Stream to, SquareAnswer answer, SquareKnowledge known, Func<Taxon, string> weeks, string state, string? notice)
    {
        await using var writer = new StreamWriter(to, new UTF8Encoding(false), leaveOpen: true);
        var title = $"Field list for {answer.Square}";
        await writer.WriteAsync($"<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>{title}</title><style>{SheetStyle.Css}</style></head>\n<body><h1>{title}</h1>\n");
        await writer.WriteAsync($"<p class=\"small\">A square of {answer.Square.Size.ToWords()}; state of the data: {Text(state)}. What you look for and do not find is worth a record too. Sensitive species are left off.</p>\n");
        if (notice is not null)
            await writer.WriteAsync($"<p><strong>{Text(notice)}</strong></p>\n");
        await writer.WriteAsync($"<p class=\"caution\">{Caution}</p>\n<p>Day ________________ Hours ________________ Name ________________________________</p>\n");
        await WriteTableAsync(writer, "Expected, and not found here yet", "Chance", known.Expected.Select(expected => new Row(
            expected.Taxon, Line($"{100 * expected.Chance.Probability:0} %"), ExpectedWords.Of(expected.Chance, known.Since), weeks(expected.Taxon))));
        await WriteTableAsync(writer, "Found here", "Years", answer.Species.Where(found => found.Taxon.GeneraliseTo is null).Select(found => new Row(
            found.Taxon, found.FirstYear == found.LastYear ? Line($"{found.FirstYear}") : Line($"{found.FirstYear} to {found.LastYear}"), known.NewLately.Contains(found.Taxon.Number) ? "New here." : "", weeks(found.Taxon))));
        await WriteTableAsync(writer, "Others", "", Enumerable.Repeat(new Row(null, "", "", ""), RowsForOthers));
        await writer.WriteAsync("</body></html>\n");
    }

    private static async Task WriteTableAsync(StreamWriter writer, string title, string middle, IEnumerable<Row> rows)
    {
        var all = rows.ToList();
        await writer.WriteAsync($"<h2>{title}</h2>\n");
        if (all.Count == 0)
        {
            await writer.WriteAsync("<p>None.</p>\n");
            return;
        }

        await writer.WriteAsync($"<table><thead><tr><th scope=\"col\">Seen</th><th scope=\"col\">Species</th><th scope=\"col\">{middle}</th><th scope=\"col\">Best weeks</th><th scope=\"col\">Where, how many, what it did</th></tr></thead><tbody>\n");
        foreach (var row in all)
            await writer.WriteAsync($"<tr><td><span class=\"box\"></span></td><th scope=\"row\">{Name(row.Taxon)}{(row.Remark.Length == 0 ? "" : $"<br><span class=\"small\">{Text(row.Remark)}</span>")}</th><td>{row.Middle}</td><td>{row.Weeks}</td><td class=\"room wide\"></td></tr>\n");
        await writer.WriteAsync("</tbody></table>\n");
    }

    private static string Name(Taxon? taxon) => taxon switch
    {
        null => "&nbsp;",
        { VernacularName: { Length: > 0 } name } => $"{Text(name)} (<em>{Text(taxon.ScientificName)}</em>)",
        _ => $"<em>{Text(taxon.ScientificName)}</em>",
    };

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Text(string text) => HtmlEncoder.Default.Encode(text);

    private readonly record struct Row(Taxon? Taxon, string Middle, string Remark, string Weeks);
}
