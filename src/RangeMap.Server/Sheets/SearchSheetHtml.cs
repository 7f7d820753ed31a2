using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;

namespace RangeMap.Server;

/// <summary>Squares to search as a page to print and take along: no script, nothing from elsewhere, room to write.</summary>
internal static class SearchSheetHtml
{
    private const string Style = """
        :root{color-scheme:light dark}body{font:15px/1.45 system-ui,sans-serif;max-width:52rem;margin:2rem auto;padding:0 1rem}
        h1{font-size:1.4rem;margin:0}h2{font-size:1.1rem;margin:1.5rem 0 .25rem}p{margin:.35rem 0}.small{opacity:.75}.caution{border:1px solid;padding:.5rem .75rem}
        table{border-collapse:collapse;width:100%}th,td{border-bottom:1px solid color-mix(in srgb,currentColor 30%,transparent);padding:.35rem .5rem .35rem 0;text-align:left;vertical-align:top}
        td.room{width:22%}@media print{body{margin:0;max-width:none}tr{break-inside:avoid}}
        """;

    /// <summary>Writes the sheet.</summary>
    public static async Task WriteAsync(Stream to, ForecastJson forecast, string scientificName, string? vernacularName)
    {
        await using var writer = new StreamWriter(to, new UTF8Encoding(false), leaveOpen: true);
        var name = vernacularName is null ? $"<em>{Text(scientificName)}</em>" : $"{Text(vernacularName)} (<em>{Text(scientificName)}</em>)";
        await writer.WriteAsync($"<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>Squares to search for {Text(vernacularName ?? scientificName)}</title><style>{Style}</style></head>\n<body><h1>Squares to search for {name}</h1>\n");
        await writer.WriteAsync(Line($"<p class=\"small\">Forecast for {forecast.Year} from visits up to {forecast.Now}; state of the data: {forecast.Edition}. A chance is no find: what you do not find is worth a record too.</p>\n"));
        await writer.WriteAsync($"<p class=\"caution\">{Text(forecast.Caution)}</p>\n");
        if (forecast.Weeks.Count > 0)
            await writer.WriteAsync($"<p>Best weeks of the year: {string.Join(", ", forecast.Weeks.Select(week => WeekInWords(forecast.Year, week)))}.</p>\n");
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
        await writer.WriteAsync($"<h2>{title}</h2>\n<table><thead><tr><th scope=\"col\">Square</th><th scope=\"col\">{chance}</th><th scope=\"col\">Why</th><th scope=\"col\">Day, hours</th><th scope=\"col\">Found, and what else</th></tr></thead><tbody>\n");
        foreach (var row in rows)
            await writer.WriteAsync(Line($"<tr><th scope=\"row\">{row.Square}</th><td>{100 * row.Chance:0} %</td><td>{Text(row.Why)}</td><td class=\"room\"></td><td class=\"room\"></td></tr>\n"));
        await writer.WriteAsync("</tbody></table>\n");
    }

    /// <summary>An ISO 8601 week of the year that is foretold, as days.</summary>
    private static string WeekInWords(int year, int week)
    {
        var first = DateOnly.FromDateTime(ISOWeek.ToDateTime(year, week, DayOfWeek.Monday));
        return $"{first.ToString("d MMM", CultureInfo.InvariantCulture)} to {first.AddDays(6).ToString("d MMM", CultureInfo.InvariantCulture)}";
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Text(string text) => HtmlEncoder.Default.Encode(text);
}
