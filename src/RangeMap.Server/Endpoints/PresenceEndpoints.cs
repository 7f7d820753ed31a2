using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Presence maps and first arrivals as data.</summary>
internal static class PresenceEndpoints
{
    public static void MapPresence(this RouteGroupBuilder api)
    {
        var taxon = api.MapGroup("/taxa/{taxon}").WithTags("Presence");
        taxon.MapGet("/presence", Presence)
            .WithSummary("Squares with records, by period: GeoJSON, or with format= csv, gpkg or parquet. region= names a nation or a region that was loaded and reaches into the squares, bbox= a box in degrees that they touch.")
            .Produces<PresenceShape>(contentType: PresenceGeoJson.MediaType);
        taxon.MapGet("/arrivals", Arrivals)
            .WithSummary("The first certain year of every square, as GeoJSON; with model=true the year that the arrival model gives, with its interval and the local speed.")
            .Produces<ArrivalsShape>(contentType: PresenceGeoJson.MediaType)
            .AlsoProduces<ModelledArrivalsShape>(PresenceGeoJson.MediaType);
    }

    private static async Task<IResult> Presence(
        HttpContext http, CurrentData current, DataFolder folder, ExportFolder kept, string taxon, CancellationToken cancel, string? grid = null, string? periods = null, string? quality = null, string? region = null, string? bbox = null, string? format = null, string? edition = null)
    {
        var data = current.At(edition);
        var question = PresenceQuestion.Of(data, taxon, grid, periods, quality, region, bbox);
        if (format is "gpkg" or "parquet" && ExportFormats.Find(format) is { } kind)
            return await AsFileAsync(http, folder, kept, data, question, kind, cancel);
        var map = AnswerPresence.Answer(data, question);
        return format switch
        {
            null or "geojson" => Results.Stream(to => PresenceGeoJson.WriteAsync(to, map, Caption.Of(data, question)), PresenceGeoJson.MediaType),
            "csv" => Results.Stream(to => PresenceCsv.WriteAsync(to, map), PresenceCsv.MediaType, FileNames.Of("presence", [question.Taxon], false, question.Size, data) + ".csv"),
            _ => throw new UserException($"'{format}' is no format of presence maps.", "format", "Use geojson, csv, gpkg or parquet."),
        };
    }

    private static async Task<IResult> AsFileAsync(
        HttpContext http, DataFolder folder, ExportFolder kept, DataSnapshot data, PresenceQuestion question, ExportFormat format, CancellationToken cancel)
    {
        var key = string.Join('\n', "presence", data.FrozenId, data.StateName, data.Edition.MadeAt, question.Taxon.Id, question.Size, question.Quality, question.Periods, string.Join(";", question.PlaceWords()), format);
        var (path, tag) = await kept.GetOrMakeAsync(key, format.Ending(), file => MakePresence.WriteAsync(folder, data, question, format, file, cancel), cancel);
        return ExportEndpoints.Send(http, path, tag, format.MediaType(), FileNames.Of("presence", [question.Taxon], false, question.Size, data) + format.Ending());
    }

    private static IResult Arrivals(CurrentData current, string taxon, string? grid = null, string? quality = null, bool model = false, string? edition = null)
    {
        var data = current.At(edition);
        var (found, size) = (data.Find(taxon), Ask.Size(grid));
        if (model && ForecastSpread.Fit(data, found, size).Answer.Refused is { } refused)
            return Results.Stream(to => RefusedGeoJson.WriteAsync(to, size, refused, Caption.Of(data, found)), PresenceGeoJson.MediaType);
        if (model)
        {
            var modelled = DrawFronts.Arrivals(data, found, size);
            return Results.Stream(to => ModelledArrivalsGeoJson.WriteAsync(to, size, modelled, Caption.Of(data, found)), PresenceGeoJson.MediaType);
        }

        var arrivals = AnswerPresence.Arrivals(data, found, size, Ask.Quality(quality)).Select(arrival => new SquareArrival(arrival.Square, arrival.Year));
        return Results.Stream(to => ArrivalsGeoJson.WriteAsync(to, size, arrivals, Caption.Of(data, found)), PresenceGeoJson.MediaType);
    }
}
