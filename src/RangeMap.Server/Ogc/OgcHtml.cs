using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace RangeMap.Server;

/// <summary>Documents of the OGC interface as plain pages: values as lists, links as links.</summary>
internal static class OgcHtml
{
    private const string Head = """
        <!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>{0}</title>
        <style>body{{font:1rem/1.5 system-ui;max-width:70rem;margin:1rem auto;padding:0 1rem}}table{{border-collapse:collapse}}td,th{{text-align:left;padding:.1rem .6rem;border-bottom:1px solid #ccc}}dt{{font-weight:600}}</style>
        </head><body><h1>{0}</h1>
        """;

    private static readonly CompositeFormat Top = CompositeFormat.Parse(Head);

    /// <summary>The page of a document.</summary>
    public static string Page(JsonObject document, string title)
    {
        var page = new StringBuilder().AppendFormat(System.Globalization.CultureInfo.InvariantCulture, Top, WebUtility.HtmlEncode(title));
        if (document["features"] is JsonArray features)
        {
            WriteTable(page, features);
            document = new(document.Where(member => member.Key != "features").Select(member => new KeyValuePair<string, JsonNode?>(member.Key, member.Value?.DeepClone())));
        }

        Write(page, document);
        return page.Append("</body></html>").ToString();
    }

    private static void WriteTable(StringBuilder page, JsonArray features)
    {
        var names = features.SelectMany(feature => feature!["properties"]!.AsObject().Select(member => member.Key)).Distinct().ToList();
        page.Append("<table><tr>").AppendJoin("", names.Select(name => $"<th>{WebUtility.HtmlEncode(name)}</th>")).Append("</tr>");
        foreach (var feature in features)
            page.Append("<tr>").AppendJoin("", names.Select(name => $"<td>{WebUtility.HtmlEncode(feature!["properties"]![name]?.ToString())}</td>")).Append("</tr>");
        page.Append("</table>");
    }

    private static void Write(StringBuilder page, JsonNode? node)
    {
        switch (node)
        {
            case JsonObject link when link["href"] is { } href && link["rel"] is { } relation:
                page.Append("<a href=\"").Append(WebUtility.HtmlEncode(href.ToString())).Append("\">").Append(WebUtility.HtmlEncode(link["title"]?.ToString() ?? relation.ToString())).Append("</a> (").Append(WebUtility.HtmlEncode(link["type"]?.ToString())).Append(')');
                break;
            case JsonObject members:
                page.Append("<dl>");
                foreach (var (name, value) in members)
                {
                    page.Append("<dt>").Append(WebUtility.HtmlEncode(name)).Append("</dt><dd>");
                    Write(page, value);
                    page.Append("</dd>");
                }

                page.Append("</dl>");
                break;
            case JsonArray entries:
                page.Append("<ul>");
                foreach (var entry in entries)
                {
                    page.Append("<li>");
                    Write(page, entry);
                    page.Append("</li>");
                }

                page.Append("</ul>");
                break;
            default:
                page.Append(WebUtility.HtmlEncode(node?.ToString()));
                break;
        }
    }
}
