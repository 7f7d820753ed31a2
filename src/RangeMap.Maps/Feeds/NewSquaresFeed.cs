using System.Globalization;
using System.Text;
using System.Xml;
using RangeMap.Grids;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>What a feed of new squares says beside its squares.</summary>
/// <param name="TaxonId">Identifier of the taxon, part of the identifiers of the feed.</param>
/// <param name="TaxonName">Scientific name.</param>
/// <param name="Title">Title of the feed.</param>
/// <param name="Subtitle">What else must be said; null for nothing.</param>
/// <param name="Author">Who publishes the data.</param>
/// <param name="Rights">Whom to credit.</param>
/// <param name="UpdatedAt">When the edition was made.</param>
/// <param name="Self">Absolute address of the feed.</param>
/// <param name="SquareAddress">Absolute address that tells of a square, with {square} in it.</param>
/// <param name="Authority">The name or address of the server, without a port: a part of the identifiers.</param>
public sealed record FeedCaption(
    string TaxonId, string TaxonName, string Title, string? Subtitle, string Author, string Rights, DateTimeOffset UpdatedAt, string Self, string SquareAddress, string Authority);

/// <summary>
/// Squares in which a taxon was found for the first time, newest first, as an Atom feed (RFC 4287). An entry is a square; its identifier is
/// a tag URI (RFC 4151) that stays the same whatever is learned of the square later, and its time that of the first find.
/// </summary>
public static class NewSquaresFeed
{
    /// <summary>The media type.</summary>
    public const string MediaType = "application/atom+xml";

    /// <summary>Entries at most.</summary>
    public const int MostEntries = 200;

    private const string Namespace = "http://www.w3.org/2005/Atom";

    /// <summary>The year in which RangeMap began to give identifiers, as a tag URI must name a day on which the server had its name.</summary>
    private const string TagDate = "2026";

    private const string Day = "d MMM yyyy";

    /// <summary>Writes the feed to a stream, which stays open.</summary>
    /// <param name="output">The stream.</param>
    /// <param name="finds">The first find of every square; the newest are taken.</param>
    /// <param name="caption">All else.</param>
    public static async Task WriteAsync(Stream output, IEnumerable<FirstFind> finds, FeedCaption caption)
    {
        var settings = new XmlWriterSettings { Async = true, Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n", CloseOutput = false };
        await using var xml = XmlWriter.Create(output, settings);
        xml.WriteStartElement("feed", Namespace);
        xml.WriteAttributeString("xml", "lang", null, "en-GB");
        Element(xml, "id", Tag(caption, ""));
        Element(xml, "title", caption.Title);
        if (caption.Subtitle is { } subtitle)
            Element(xml, "subtitle", subtitle);
        Element(xml, "updated", Time(caption.UpdatedAt));
        xml.WriteStartElement("author", Namespace);
        Element(xml, "name", caption.Author);
        xml.WriteEndElement();
        Element(xml, "rights", caption.Rights);
        Element(xml, "generator", "RangeMap");
        Link(xml, "self", MediaType, caption.Self);
        foreach (var find in Newest(finds))
            WriteEntry(xml, find, caption);
        xml.WriteEndElement();
        await xml.FlushAsync().ConfigureAwait(false);
    }

    /// <summary>The date of a find as a sentence has it: "on 3 May 2026", "in May 2026", "in 2026", "between ... and ...".</summary>
    public static string InWords(FirstFind find)
    {
        var (first, last) = (DateOnly.FromDayNumber(find.FirstDay), DateOnly.FromDayNumber(find.LastDay));
        if (first == last)
            return $"on {first.ToString(Day, CultureInfo.InvariantCulture)}";
        if (first.Year == last.Year && first.DayOfYear == 1 && last is { Month: 12, Day: 31 })
            return string.Create(CultureInfo.InvariantCulture, $"in {first.Year}");
        if (first.Year == last.Year && first.Month == last.Month && first.Day == 1 && last.Day == DateTime.DaysInMonth(last.Year, last.Month))
            return $"in {first.ToString("MMM yyyy", CultureInfo.InvariantCulture)}";
        return $"between {first.ToString(Day, CultureInfo.InvariantCulture)} and {last.ToString(Day, CultureInfo.InvariantCulture)}";
    }

    private static IEnumerable<FirstFind> Newest(IEnumerable<FirstFind> finds) =>
        finds.OrderByDescending(find => find.LastDay).ThenByDescending(find => find.FirstDay).ThenBy(find => find.Square).Take(MostEntries);

    private static void WriteEntry(XmlWriter xml, FirstFind find, FeedCaption caption)
    {
        var (name, at) = (find.Square.ToString(), new DateTimeOffset(DateOnly.FromDayNumber(find.LastDay).ToDateTime(default), TimeSpan.Zero));
        xml.WriteStartElement("entry", Namespace);
        Element(xml, "id", Tag(caption, $"/{find.Square.Size.ToText()}/{Uri.EscapeDataString(name)}"));
        Element(xml, "title", $"{caption.TaxonName} in {name}");
        Element(xml, "published", Time(at));
        Element(xml, "updated", Time(at));
        Link(xml, "alternate", "application/json", caption.SquareAddress.Replace("{square}", Uri.EscapeDataString(name), StringComparison.Ordinal));
        Element(xml, "content", $"First for this square {InWords(find)}.");
        xml.WriteEndElement();
    }

    private static string Tag(FeedCaption caption, string rest) => $"tag:{caption.Authority},{TagDate}:new-squares/{Uri.EscapeDataString(caption.TaxonId)}{rest}";

    private static string Time(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    private static void Link(XmlWriter xml, string relation, string type, string address)
    {
        xml.WriteStartElement("link", Namespace);
        xml.WriteAttributeString("rel", relation);
        xml.WriteAttributeString("type", type);
        xml.WriteAttributeString("href", address);
        xml.WriteEndElement();
    }

    private static void Element(XmlWriter xml, string name, string text)
    {
        xml.WriteStartElement(name, Namespace);
        if (name == "content")
            xml.WriteAttributeString("type", "text");
        xml.WriteString(Xml.Clean(text));
        xml.WriteEndElement();
    }
}
