using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Names that people accepted once for a taxon of the list.</summary>
internal static class NameEndpoints
{
    public static void MapNames(this RouteGroupBuilder api)
    {
        var names = api.MapGroup("/names").Require(Right.Import).WithTags("Names");
        names.MapGet("", (DataFolder folder, TimeProvider clock) => new AcceptedNameListJson(new AcceptedNameStore(folder.Database, clock).ReadAll()))
            .WithSummary("Names that were accepted, with the taxon that each stands for.");
        names.MapPost("", Accept).WithSummary("Accepts a name for a taxon of the list; the next file with it is read without asking.").Produces(StatusCodes.Status204NoContent);
        names.MapDelete("/{name}", Forget).WithSummary("Forgets a name; records that were read under it stay.").Produces(StatusCodes.Status204NoContent);
    }

    private static IResult Accept(HttpContext http, DataFolder folder, CurrentData current, TimeProvider clock, AcceptJson accept)
    {
        if (string.IsNullOrWhiteSpace(accept.Name) || string.IsNullOrWhiteSpace(accept.Taxon))
            throw new UserException("A name and a taxon are needed.", "name", "Send {\"name\":\"as the file writes it\",\"taxon\":\"taxonID or name of the list\"}.");
        new AcceptedNameStore(folder.Database, clock).Accept(accept.Name, current.Now().Find(accept.Taxon).Id, http.Caller().Name!);
        return Results.NoContent();
    }

    private static IResult Forget(DataFolder folder, TimeProvider clock, string name) => new AcceptedNameStore(folder.Database, clock).Forget(name)
        ? Results.NoContent()
        : throw new UserException($"The name '{name}' was not accepted.", "name", "GET /api/v1/names lists those that were.", StatusCodes.Status404NotFound);
}

/// <summary>A name to accept.</summary>
/// <param name="Name">As files write it.</param>
/// <param name="Taxon">Identifier or scientific name of the list.</param>
internal sealed record AcceptJson(string? Name, string? Taxon);

/// <summary>Names that were accepted.</summary>
internal sealed record AcceptedNameListJson(IReadOnlyList<AcceptedName> Names);

/// <summary>Names that the list does not have.</summary>
internal sealed record UnknownNameListJson(IReadOnlyList<UnknownNameJson> Names)
{
    public static UnknownNameListJson Of(IReadOnlyList<UnknownName> names) => new([.. names.Select(name => new UnknownNameJson(
        name.Name, name.Rows, [.. name.Suggestions.Select(suggestion => new SuggestionJson(suggestion.Taxon.Id, suggestion.Taxon.ScientificName, suggestion.Name))]))]);
}

/// <summary>A name that the list does not have.</summary>
internal sealed record UnknownNameJson(string Name, long Rows, IReadOnlyList<SuggestionJson> Suggestions);

/// <summary>A taxon that may be meant.</summary>
/// <param name="Taxon">Its identifier.</param>
/// <param name="ScientificName">Its name.</param>
/// <param name="Matched">The name of it that is close: scientific, synonym or everyday.</param>
internal sealed record SuggestionJson(string Taxon, string ScientificName, string Matched);
