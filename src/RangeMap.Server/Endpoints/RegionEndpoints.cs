namespace RangeMap.Server;

/// <summary>Regions by which maps and exports can be narrowed.</summary>
internal static class RegionEndpoints
{
    public static void MapRegions(this RouteGroupBuilder api) =>
        api.MapGet("/regions", (CurrentData current, string? edition = null) => new RegionListJson([.. KnownRegions.Of(current.At(edition)).All.Select(region => region.Name)]))
            .WithTags("Places")
            .WithSummary("Names of the nations and of the regions that were loaded; region= takes them. A frozen edition knows the nations only.");
}

/// <summary>Regions.</summary>
/// <param name="Regions">Their names.</param>
internal sealed record RegionListJson(IReadOnlyList<string> Regions);
