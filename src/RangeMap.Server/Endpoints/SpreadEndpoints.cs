namespace RangeMap.Server;

/// <summary>How a taxon spread.</summary>
internal static class SpreadEndpoints
{
    public static void MapSpread(this RouteGroupBuilder api) =>
        api.MapGet("/taxa/{taxon}/spread", Spread)
            .WithTags("Spread")
            .WithSummary("Speeds of spread by several methods, each with interval and number of squares, or the reason why there is none.");

    private static SpreadJson Spread(CurrentData current, string taxon, string? grid = null, string? origin = null, bool model = false)
    {
        var data = current.Now();
        return SpreadJson.Of(MeasureSpread.Answer(data, data.Find(taxon), Ask.Size(grid), string.IsNullOrEmpty(origin) ? null : Ask.Square(origin), model));
    }
}
