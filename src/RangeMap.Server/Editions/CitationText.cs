using System.Text;
using System.Text.Json.Nodes;

namespace RangeMap.Server;

/// <summary>How an edition is cited: as a sentence, as CITATION.cff (Citation File Format 1.2.0) and as DataCite JSON (metadata schema 4).</summary>
internal static class CitationText
{
    private const string Description = "Presence and recording effort by taxon, national grid square and date; places of sensitive species generalised.";

    /// <summary>The sentence.</summary>
    public static string Of(string title, string frozenAt, string id) => $"{title} ({frozenAt[..4]}). Frozen edition of {frozenAt[..10]}, sha256:{id}.";

    /// <summary>The sentence for a live state, which the next import replaces.</summary>
    public static string OfLive(string title, long number, string madeAt) =>
        FormattableString.Invariant($"{title}, live state {number}{(madeAt.Length >= 10 ? $" of {madeAt[..10]}" : "")}; not frozen, so that it cannot be asked for again.");

    /// <summary>CITATION.cff.</summary>
    public static string Cff(FrozenEdition edition)
    {
        var text = new StringBuilder();
        text.Append("cff-version: 1.2.0\nmessage: ").Append(Quoted("If you use these data, please cite them as below.")).Append("\ntype: dataset\n");
        text.Append("title: ").Append(Quoted(edition.Title)).Append("\nabstract: ").Append(Quoted(Description)).Append('\n');
        text.Append("authors:\n  - name: ").Append(Quoted(edition.Title)).Append('\n');
        text.Append("version: ").Append(Quoted(edition.Id)).Append("\ndate-released: ").Append(Quoted(edition.FrozenAt[..10])).Append('\n');
        text.Append("identifiers:\n  - type: other\n    value: ").Append(Quoted("sha256:" + edition.Id)).Append("\n    description: ").Append(Quoted("SHA-256 of the content")).Append('\n');
        return text.ToString();
    }

    /// <summary>DataCite JSON; what only a registrar can give, a DOI, is left out.</summary>
    public static JsonObject DataCite(FrozenEdition edition) => new()
    {
        ["schemaVersion"] = "http://datacite.org/schema/kernel-4",
        ["types"] = new JsonObject { ["resourceTypeGeneral"] = "Dataset", ["resourceType"] = "Occurrence cube" },
        ["titles"] = new JsonArray(new JsonObject { ["title"] = edition.Title }),
        ["creators"] = new JsonArray(new JsonObject { ["name"] = edition.Title, ["nameType"] = "Organizational" }),
        ["publisher"] = new JsonObject { ["name"] = edition.Title },
        ["publicationYear"] = edition.Year,
        ["dates"] = new JsonArray(new JsonObject { ["date"] = edition.FrozenAt[..10], ["dateType"] = "Issued" }),
        ["version"] = edition.Id,
        ["alternateIdentifiers"] = new JsonArray(new JsonObject { ["alternateIdentifier"] = "sha256:" + edition.Id, ["alternateIdentifierType"] = "SHA-256" }),
        ["rightsList"] = new JsonArray([.. edition.Licences.Select(share => (share.Licence, share.Url)).Distinct().Select(Rights)]),
        ["descriptions"] = new JsonArray(new JsonObject { ["description"] = Description, ["descriptionType"] = "Abstract" }),
        ["formats"] = new JsonArray("text/csv", "application/geo+json", "application/geopackage+sqlite3", "application/vnd.apache.parquet"),
    };

    private static JsonNode Rights((string? Licence, string? Url) licence)
    {
        var rights = new JsonObject { ["rights"] = licence.Licence ?? (licence.Url is null ? "No licence stated" : licence.Url) };
        if (licence.Url is not null)
            rights["rightsUri"] = licence.Url;
        return rights;
    }

    /// <summary>A YAML scalar in double quotes is a JSON string.</summary>
    private static string Quoted(string text) => System.Text.Json.JsonSerializer.Serialize(text, CommandContext.Json);
}
