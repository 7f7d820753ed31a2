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

    public static void MapFreezing(this RouteGroupBuilder personal) => personal.MapGroup("/editions").Require(Right.Organise).WithTags("Editions")
        .MapPost("", Freeze)
        .WithSummary("Freezes the live state, so that it can be cited and asked for again whatever is imported later. Equal data are the same edition: the answer is then the one that was there.")
        .Produces<FrozenEdition>(StatusCodes.Status201Created).Produces<FrozenEdition>();

    private static IResult Freeze(CurrentData current, DataFolder folder, TimeProvider clock, FreezeJson freeze)
    {
        if (string.IsNullOrWhiteSpace(freeze.Reason))
            throw new UserException("The edition has no reason.", "reason", "Say in a sentence what it is frozen for; those who cite it read it.");
        current.LookAgain();
        var (edition, isNew) = FreezeEdition.Run(folder, current.Now(), freeze.Title, freeze.Reason, clock.GetUtcNow());
        return isNew ? Results.Created($"/api/v1/editions/{edition.Id}", edition) : Results.Ok(edition);
    }
}

/// <summary>What to say of an edition that is to be frozen.</summary>
/// <param name="Title">Its title; that of the data where none is given.</param>
/// <param name="Reason">What it is frozen for, in a sentence that everyone may read.</param>
internal sealed record FreezeJson(string? Title, string? Reason);

/// <summary>The frozen editions.</summary>
/// <param name="LiveState">Number of the live state, which every import advances.</param>
/// <param name="Editions">The frozen ones.</param>
internal sealed record EditionListJson(long LiveState, IReadOnlyList<FrozenEdition> Editions);
