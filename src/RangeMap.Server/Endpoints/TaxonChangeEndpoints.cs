using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Renames, merges and splits of taxa, with their history.</summary>
internal static class TaxonChangeEndpoints
{
    public static void MapTaxonChanges(this RouteGroupBuilder api)
    {
        var changes = api.MapGroup("/taxon-changes").Require(Right.Review).WithTags("Taxon changes");
        changes.MapGet("", (DataFolder folder, TimeProvider clock) => new TaxonChangeListJson([.. new TaxonChangeStore(folder.Database, clock).ReadAll().Select(TaxonChangeJson.Of)]))
            .WithSummary("Every rename, merge and split, newest first.");
        changes.MapPost("", Make).WithSummary("Renames, merges or splits a taxon; the records follow.");
        changes.MapDelete("/{number:long}", Undo).WithSummary("Takes a change back; what people decided later stays.");
    }

    private static TaxonChangeAnswer Make(HttpContext http, DataFolder folder, CurrentData current, TimeProvider clock, MakeTaxonChangeJson change)
    {
        var (store, by, reason) = (new TaxonChangeStore(folder.Database, clock), http.Caller().Name!, change.Reason?.Trim() ?? "");
        var taxon = Needed(change.Taxon, "taxon");
        return Answer(current, () => change.Kind switch
        {
            "rename" => store.Rename(taxon, Needed(change.Name, "name"), string.IsNullOrWhiteSpace(change.Authorship) ? null : change.Authorship.Trim(), by, reason),
            "merge" => store.Merge(taxon, Needed(change.Into, "into"), by, reason),
            "split" => store.Split(taxon, [.. (change.Rules ?? []).Select(SplitRuleText.Parse)], by, reason),
            _ => throw new UserException($"'{change.Kind}' is no change of a taxon.", "kind", "Use rename, merge or split."),
        });
    }

    private static TaxonChangeAnswer Undo(HttpContext http, DataFolder folder, CurrentData current, TimeProvider clock, long number) =>
        Answer(current, () => new TaxonChangeStore(folder.Database, clock).Undo(number, http.Caller().Name!));

    private static TaxonChangeAnswer Answer(CurrentData current, Func<TaxonChangeAnswer> change)
    {
        try
        {
            var answer = change();
            current.LookAgain();
            return answer;
        }
        catch (StoreException problem) when (problem.IsOfRequest)
        {
            throw new UserException(problem.Message, "taxon", problem.Mend, StatusCodes.Status409Conflict);
        }
    }

    private static string Needed(string? text, string where) =>
        string.IsNullOrWhiteSpace(text) ? throw new UserException($"The change says nothing of {where}.", where, "/reference describes what each kind of change needs.") : text.Trim();
}

/// <summary>A change to make.</summary>
/// <param name="Kind">rename, merge or split.</param>
/// <param name="Taxon">taxonID of the taxon that is changed.</param>
/// <param name="Name">Of a rename: the new scientific name.</param>
/// <param name="Authorship">Of a rename: the authorship of the new name.</param>
/// <param name="Into">Of a merge: taxonID of the taxon that stays.</param>
/// <param name="Rules">Of a split: rules such as "PART: squares=NZ NY25; stage=queen".</param>
/// <param name="Reason">Why.</param>
internal sealed record MakeTaxonChangeJson(string? Kind, string? Taxon, string? Name, string? Authorship, string? Into, IReadOnlyList<string>? Rules, string? Reason);

/// <summary>Changes, newest first.</summary>
internal sealed record TaxonChangeListJson(IReadOnlyList<TaxonChangeJson> Changes);

/// <summary>A change that was made.</summary>
internal sealed record TaxonChangeJson(long Number, string Kind, string Taxon, string Words, string At, string By, string Reason, string? UndoneAt)
{
    public static TaxonChangeJson Of(TaxonChange change) =>
        new(change.Number, change.Kind, change.TaxonId, change.Words, change.MadeAt, change.MadeBy, change.Reason, change.UndoneAt);
}
