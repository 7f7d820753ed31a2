using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;

namespace RangeMap.Server;

/// <summary>Squares to search as a page to print and take along: no script, nothing from elsewhere, room to write.</summary>
internal static class SearchSheetHtml
{
    /// <summary>Writes the sheet.</summary>
    public static async Task WriteAsync(Stream to, ForecastJson forecast, string scientificName, string? vernacularName, string? notice)
    {
        await using var writer = new StreamWriter(to, new UTF8Encoding(false), leaveOpen: true);
        var name = vernacularName is null ? $"<em>{Text(scientificName)}</em>" : $"{Text(vernacularName)} (<em>{Text(scientificName)}</em>)";
        await writer.WriteAsync($"<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>Squares to search for {Text(vernacularName ?? scientificName)}</title><style>{SheetStyle.Css}</style></head>\n<body><h1>Squares to search for {name}</h1>\n");
        await writer.WriteAsync(Line($"<p class=\"small\">Forecast for {forecast.Year} from visits up to {forecast.Now}; state of the data: {forecast.Edition}. A chance is no find: what you do not find is worth a record too.</p>\n"));
        if (notice is not null)
            await writer.WriteAsync($"<p><strong>{Text(notice)}</strong></p>\n");
        await writer.WriteAsync($"<p class=\"caution\">{Text(forecast.Caution)}</p>\n");
        if (forecast.Weeks.Count > 0)
            await writer.WriteAsync($"<p>Best weeks of the year: {BestWeeks.InWords(forecast.Weeks, forecast.Year)}.</p>\n");
        if (forecast.Search.Count + forecast.Ahead.Count == 0)
            await writer.WriteAsync("<p>No square is named: the species is sensitive, or it is found wherever it may be.</p>\n");
        await WriteTableAsync(writer, "Next to be reached", "Reached next", forecast.Ahead.Select(square => (square.Square, square.Arrives, "")));
        await WriteTableAsync(writer, "Probably there already, and not found yet", "There", forecast.Search.Select(square => (square.Square, square.Probability, square.Why)));
        await writer.WriteAsync("</body></html>\n");
    }

    private static async Task WriteTableAsync(StreamWriter writer, string title, string chance, IEnumerable<(string Square, double Chance, string Why)> squares)
    {
        var rows = squares.ToList();
        if (rows.Count == 0)
            return;
        var why = rows.Exists(row => row.Why.Length > 0);
        await writer.WriteAsync($"<h2>{title}</h2>\n<table><thead><tr><th scope=\"col\">Square</th><th scope=\"col\">{chance}</th>{(why ? "<th scope=\"col\">Why</th>" : "")}<th scope=\"col\">Day, hours</th><th scope=\"col\">Found, and what else</th></tr></thead><tbody>\n");
        foreach (var row in rows)
            await writer.WriteAsync(Line($"<tr><th scope=\"row\">{row.Square}</th><td>{100 * row.Chance:0} %</td>{(why ? $"<td>{Text(row.Why)}</td>" : "")}<td class=\"room\"></td><td class=\"room\"></td></tr>\n"));
        await writer.WriteAsync("</tbody></table>\n");
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Text(string text) => HtmlEncoder.Default.Encode(text);
}
