using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Records;
using RangeMap.Store;

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
            .AlsoProduces<RefusedJson>()
            .AlsoProduces<ForetoldShape>(PresenceGeoJson.MediaType);
        taxon.MapGet("/fronts", Fronts)
            .WithSummary("The front of each year, with the band in which it lies, as GeoJSON lines and areas.")
            .Produces<FrontsShape>(contentType: PresenceGeoJson.MediaType);
    }

    private static IResult Forecast(CurrentData current, DataFolder folder, string taxon, string? grid = null, int? year = null, string? format = null)
    {
        var data = current.Now();
        var (found, size) = (data.Find(taxon), Ask.Size(grid));
        if (format is (null or "json" or "geojson") && ForecastSpread.Fit(data, found, size).Answer.Refused is { } refused)
            return Refused(data, found, size, refused, format == "geojson");
        var answer = ForecastSpread.Answer(data, found, size, year);
        return format switch
        {
            null or "json" => Results.Ok(ForecastJson.Of(data, answer)),
            "geojson" => Results.Stream(
                to => ForecastGeoJson.WriteAsync(to, answer.Size, answer.Forecast.Now, answer.Forecast.Year, ForecastSpread.Squares(answer), Caption.Of(data, answer.Taxon)), PresenceGeoJson.MediaType),
            "html" => Results.Stream(to => SearchSheetHtml.WriteAsync(to, ForecastJson.Of(data, answer), answer.Taxon.ScientificName, answer.Taxon.VernacularName, Notice(folder)), "text/html; charset=utf-8"),
            "gpx" => Results.Stream(
                to => WaypointsGpx.WriteAsync(to, $"Squares to search for {answer.Taxon.ScientificName}", Notice(folder) is { } notice ? $"{notice} {ForecastJson.FieldCaution}" : ForecastJson.FieldCaution, ForecastSpread.Waypoints(answer)), WaypointsGpx.MediaType, $"{answer.Taxon.Id}-search.gpx"),
            _ => throw new UserException($"'{format}' is no format of forecasts.", "format", "Use json, geojson, html or gpx."),
        };
    }

    /// <summary>A species that does not spread, or is hardly recorded, is no mistake of whoever asks: the answer says what is missing.</summary>
    private static IResult Refused(DataSnapshot data, Taxon taxon, SquareSize size, string refused, bool asGeoJson) => asGeoJson
        ? Results.Stream(to => RefusedGeoJson.WriteAsync(to, size, refused, Caption.Of(data, taxon)), PresenceGeoJson.MediaType)
        : Results.Ok(new RefusedJson(taxon.Id, size.ToText(), data.Edition.Number, refused));

    /// <summary>What a reader must be told about the data, such as that they are invented.</summary>
    private static string? Notice(DataFolder folder) => new Settings(folder.Database).Read(SettingNames.Notice);

    private static IResult Fronts(CurrentData current, string taxon, string? grid = null, string? years = null)
    {
        var data = current.Now();
        var (found, size) = (data.Find(taxon), Ask.Size(grid));
        if (ForecastSpread.Fit(data, found, size).Answer.Refused is { } refused)
            return Refused(data, found, size, refused, asGeoJson: true);
        var (fronts, now) = DrawFronts.Answer(data, found, size, years);
        return Results.Stream(to => FrontsGeoJson.WriteAsync(to, size, fronts, now, Caption.Of(data, found)), PresenceGeoJson.MediaType);
    }
}

/// <summary>Why there is no forecast.</summary>
/// <param name="Taxon">Identifier of the taxon.</param>
/// <param name="Grid">Side of the squares.</param>
/// <param name="Edition">The edition of the data.</param>
/// <param name="Refused">What is missing, as a sentence.</param>
internal sealed record RefusedJson(string Taxon, string Grid, long Edition, string Refused);
