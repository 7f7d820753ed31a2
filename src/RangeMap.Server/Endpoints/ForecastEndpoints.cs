namespace RangeMap.Server;

/// <summary>Where a spreading taxon will be.</summary>
internal static class ForecastEndpoints
{
    public static void MapForecast(this RouteGroupBuilder api) =>
        api.MapGet("/taxa/{taxon}/forecast", Forecast)
            .WithTags("Spread")
            .WithSummary("Expected new squares with an interval, squares to search with the chance of a find and the best weeks, and the record of past forecasts.");

    private static ForecastJson Forecast(CurrentData current, string taxon, string? grid = null, int? year = null)
    {
        var data = current.Now();
        return ForecastJson.Of(data, ForecastSpread.Answer(data, data.Find(taxon), Ask.Size(grid), year));
    }
}
