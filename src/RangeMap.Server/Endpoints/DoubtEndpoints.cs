using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>What doubts there are.</summary>
internal static class DoubtEndpoints
{
    public static void MapDoubts(this RouteGroupBuilder api) =>
        api.MapGet("/doubts", () => new DoubtListJson([.. DoubtCatalogue.All.Select(KnownDoubtJson.Of)]))
            .WithTags("Review")
            .WithSummary("Every reason to look at a record again: code, title, weight and general words.");
}

/// <summary>Doubts, the heaviest first.</summary>
internal sealed record DoubtListJson(IReadOnlyList<KnownDoubtJson> Doubts);

/// <summary>A doubt, whatever the record.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Title">A few words.</param>
/// <param name="Weight">How much it counts in the order of the queue; 0 for a note.</param>
/// <param name="Serious">True when it keeps an unreviewed record off the usual maps.</param>
internal sealed record KnownDoubtJson(string Code, string Title, int Weight, bool Serious)
{
    public static KnownDoubtJson Of(DoubtEntry entry) => new(entry.Code, entry.Title, entry.Weight, entry.Serious);
}
