namespace RangeMap.Server;

/// <summary>Frozen editions: states of the data that can be cited and asked for again.</summary>
internal static class EditionEndpoints
{
    public static void MapEditions(this RouteGroupBuilder api)
    {
        var editions = api.MapGroup("/editions").WithTags("Editions");
        editions.MapGet("", (FrozenEditions frozen, CurrentData current) => new EditionListJson(current.Now().Edition.Number, frozen.All())).WithSummary("The frozen editions, the newest first, and the number of the live state.");
        editions.MapGet("/{edition}", (FrozenEditions frozen, string edition) => frozen.Find(edition)).WithSummary("A frozen edition: counts, licences, date and how to cite it.");
        editions.MapGet("/{edition}/citation.cff", (FrozenEditions frozen, string edition) => Results.Text(CitationText.Cff(frozen.Find(edition)), "application/yaml; charset=utf-8")).WithSummary("How to cite the edition, in the Citation File Format.");
        editions.MapGet("/{edition}/datacite.json", (FrozenEditions frozen, string edition) => Results.Json(CitationText.DataCite(frozen.Find(edition)), contentType: "application/vnd.datacite.datacite+json")).WithSummary("How to cite the edition, as DataCite JSON without a DOI.");
    }
}

/// <summary>The frozen editions.</summary>
/// <param name="LiveState">Number of the live state, which every import advances.</param>
/// <param name="Editions">The frozen ones.</param>
internal sealed record EditionListJson(long LiveState, IReadOnlyList<FrozenEdition> Editions);
