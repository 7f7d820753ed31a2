using System.Text.RegularExpressions;

namespace RangeMap.Records;

/// <summary>Reads title, creators, licence and citation from a description in the Ecological Metadata Language, 2.1 or 2.2.</summary>
internal static partial class CitationReader
{
    private const int MostCreators = 1_000;

    /// <exception cref="ImportProblemException">It is no XML.</exception>
    public static ArchiveCitation Read(FileBundle files, string name, FileLimits limits)
    {
        using var xml = UntrustedXml.Open(files, name, limits, limits.DescriptionBytes);
        var citation = new ArchiveCitation();
        var creators = new List<string>();
        while (xml.ReadStart())
        {
            citation = xml.Element switch
            {
                "eml" => citation with { Identifier = Tidy(xml.Attribute("packageId")) },
                "alternateIdentifier" => citation with { Identifier = citation.Identifier ?? Tidy(xml.ReadContent()) },
                "title" => citation with { Title = citation.Title ?? Tidy(xml.ReadContent()) },
                "pubDate" => citation with { Published = citation.Published ?? Tidy(xml.ReadContent()) },
                "citation" => citation with { Citation = citation.Citation ?? Tidy(xml.ReadContent()) },
                "intellectualRights" or "licensed" => WithLicence(xml, citation),
                _ => citation,
            };
            if (xml is { IsStart: true, Element: "creator" } && creators.Count < MostCreators && CreatorOf(xml) is { } creator)
                creators.Add(creator);
        }

        return citation with { Creators = creators };
    }

    /// <summary>The words of a statement of rights, and the address that it points to.</summary>
    private static ArchiveCitation WithLicence(UntrustedXmlReader xml, ArchiveCitation citation)
    {
        if (xml.IsEmpty)
            return citation;
        string? url = null, text = "";
        var depth = xml.Depth;
        while (xml.ReadInside(depth))
        {
            if (xml is { IsStart: true, Element: "ulink" or "url" })
                url ??= xml.Attribute("url") ?? Tidy(xml.ReadContent());
            else if (xml is { IsStart: true, Element: "identifier" })
                xml.ReadContent();
            else if (xml.IsText && text.Length < RowLimits.Default.KeptCharacters)
                text += xml.Text;
        }

        return citation with { Licence = citation.Licence ?? Tidy(text), LicenceUrl = citation.LicenceUrl ?? url };
    }

    private static string? CreatorOf(UntrustedXmlReader xml)
    {
        if (xml.IsEmpty)
            return null;
        string? given = null, family = null, organisation = null;
        var depth = xml.Depth;
        while (xml.ReadInside(depth))
        {
            if (xml is { IsStart: true, Element: "givenName" })
                given = Tidy(xml.ReadContent());
            else if (xml is { IsStart: true, Element: "surName" })
                family = Tidy(xml.ReadContent());
            else if (xml is { IsStart: true, Element: "organizationName" })
                organisation = Tidy(xml.ReadContent());
        }

        return Tidy($"{given} {family}") ?? organisation;
    }

    private static string? Tidy(string? text)
    {
        var tidy = WhiteSpace().Replace(text ?? "", " ").Trim();
        return tidy.Length == 0 ? null : tidy;
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();
}
