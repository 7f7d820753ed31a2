namespace RangeMap.Server;

/// <summary>Groups of the taxon list.</summary>
internal static class GroupEndpoints
{
    public static void MapGroups(this RouteGroupBuilder api) =>
        api.MapGet("/groups", (CurrentData current) => GroupListJson.Of(current.Now()))
            .WithTags("Taxa")
            .WithSummary("The groups of the taxon list: taxa recorded together, so that a visit that notes one is effort for the others.");
}

/// <summary>Groups.</summary>
/// <param name="Groups">By name; taxa without a group last.</param>
internal sealed record GroupListJson(IReadOnlyList<GroupJson> Groups)
{
    public static GroupListJson Of(DataSnapshot data)
    {
        var groups = data.Summaries.GroupBy(summary => summary.Taxon.Group).OrderBy(group => group.Key is null).ThenBy(group => group.Key, StringComparer.OrdinalIgnoreCase);
        return new([.. groups.Select(group => new GroupJson(group.Key, group.Count(), group.Count(summary => summary.Records > 0)))]);
    }
}

/// <summary>Taxa recorded together.</summary>
/// <param name="Name">Its name in the taxon list; null for taxa without one.</param>
/// <param name="Taxa">Taxa of the list in it.</param>
/// <param name="WithRecords">Of these, with records.</param>
internal sealed record GroupJson(string? Name, int Taxa, int WithRecords);
