using System.Xml;

namespace RangeMap.Maps;

/// <summary>The description of an archive in the Ecological Metadata Language 2.2: title, state of the data, licences of the data sets, question.</summary>
internal static class EmlDocument
{
    private const string Namespace = "https://eml.ecoinformatics.org/eml-2.2.0";

    public static void Write(Stream output, ExportTable table, ExportSource source, XmlWriterSettings settings)
    {
        using var xml = XmlWriter.Create(output, settings);
        xml.WriteStartElement("eml", "eml", Namespace);
        xml.WriteAttributeString("packageId", $"{source.StateWord}-{source.Edition}");
        xml.WriteAttributeString("system", "RangeMap");
        xml.WriteStartElement("dataset");
        xml.WriteElementString("alternateIdentifier", $"{source.StateWord} {source.Edition}");
        xml.WriteElementString("title", Clean($"{source.Title}: {table.Title}"));
        WriteOrganisation(xml, "creator", source.Title);
        if (source.Published.Length >= 10)
            xml.WriteElementString("pubDate", source.Published[..10]);
        xml.WriteElementString("language", "en");
        WriteParagraphs(xml, "abstract", [table.Description, .. source.Question.Select(pair => $"{pair.Key}: {pair.Value}")]);
        WriteParagraphs(xml, "intellectualRights", source.Licences.Select(Rights));
        WriteOrganisation(xml, "contact", source.Title);
        xml.WriteEndElement();
        xml.WriteStartElement("additionalMetadata");
        xml.WriteStartElement("metadata");
        xml.WriteElementString("citation", Clean(source.Citation));
        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static string Rights(LicenceShare share) =>
        FormattableString.Invariant($"{share.Title ?? share.Dataset}: {share.Licence ?? share.Url ?? "no licence stated"}{(share.Licence is not null && share.Url is not null ? $" ({share.Url})" : "")}, {share.Records} records.");

    private static void WriteOrganisation(XmlWriter xml, string role, string name)
    {
        xml.WriteStartElement(role);
        xml.WriteElementString("organizationName", Clean(name));
        xml.WriteEndElement();
    }

    private static void WriteParagraphs(XmlWriter xml, string element, IEnumerable<string> paragraphs)
    {
        xml.WriteStartElement(element);
        foreach (var paragraph in paragraphs)
            xml.WriteElementString("para", Clean(paragraph));
        xml.WriteEndElement();
    }

    /// <summary>Control characters cannot stand in XML.</summary>
    private static string Clean(string text) => string.Concat(text.Where(XmlConvert.IsXmlChar));
}
