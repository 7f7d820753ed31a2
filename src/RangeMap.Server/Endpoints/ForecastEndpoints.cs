using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Where a spreading taxon will be.</summary>
internal static class ForecastEndpoints
{
    public static void MapForecast(this RouteGroupBuilder api)
    {
        var taxon = api.MapGroup("/taxa/{taxon}").WithTags("Spread");
        taxon.MapGet("/forecast", Forecast)
            .WithSummary("Expected new squares with an interval, squares to search with the chance of a find and the best weeks, and the record of past forecasts; with format=geojson the chance of every square, with html a sheet of squares to search to print, with gpx their middles as waypoints.")
            .Produces<ForecastJson>()
            .Produces<object>(contentType: PresenceGeoJson.MediaType);
        taxon.MapGet("/fronts", Fronts)
            .WithSummary("The front of each year, with the band in which it lies, as GeoJSON lines and areas.")
            .Produces<object>(contentType: PresenceGeoJson.MediaType);
    }

    private static IResult Forecast(CurrentData current, string taxon, string? grid = null, int? year = null, string? format = null)
    {
        var data = current.Now();
        var answer = ForecastSpread.Answer(data, data.Find(taxon), Ask.Size(grid), year);
        return format switch
        {
            null or "json" => Results.Ok(ForecastJson.Of(data, answer)),
            "geojson" => Results.Stream(
                to => ForecastGeoJson.WriteAsync(to, answer.Size, answer.Forecast.Now, answer.Forecast.Year, ForecastSpread.Squares(answer), Caption.Of(data, answer.Taxon)), PresenceGeoJson.MediaType),
            "html" => Results.Stream(to => SearchSheetHtml.WriteAsync(to, ForecastJson.Of(data, answer), answer.Taxon.ScientificName, answer.Taxon.VernacularName), "text/html; charset=utf-8"),
            "gpx" => Results.Stream(
                to => WaypointsGpx.WriteAsync(to, $"Squares to search for {answer.Taxon.ScientificName}", ForecastJson.FieldCaution, ForecastSpread.Waypoints(answer)), WaypointsGpx.MediaType, $"{answer.Taxon.Id}-search.gpx"),
            _ => throw new UserException($"'{format}' is no format of forecasts.", "format", "Use json, geojson, html or gpx."),
        };
    }

    private static IResult Fronts(CurrentData current, string taxon, string? grid = null, string? years = null)
    {
        var data = current.Now();
        var (found, size) = (data.Find(taxon), Ask.Size(grid));
        var (fronts, now) = DrawFronts.Answer(data, found, size, years);
        return Results.Stream(to => FrontsGeoJson.WriteAsync(to, size, fronts, now, Caption.Of(data, found)), PresenceGeoJson.MediaType);
    }
}
