using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Exports as files. A broken-off download goes on where it stopped (RFC 9110, ranges); count=true tells the size beforehand.</summary>
internal static class ExportEndpoints
{
    public static void MapExports(this RouteGroupBuilder api)
    {
        var exports = api.MapGroup("/exports").WithTags("Exports");
        exports.MapGet("/presence", Presence).WithSummary("Taxon by square by year with effort: csv, csvw (its description), geojson, gpkg or parquet; with count=true its size beforehand.").Produces<ExportSize>().AlsoProduces<CsvwShape>(ExportFormat.Csvw.MediaType());
        exports.MapGet("/effort", Effort).WithSummary("Recording effort by group, square and year, in the same formats.").Produces<ExportSize>().AlsoProduces<CsvwShape>(ExportFormat.Csvw.MediaType());
        exports.MapGet("/tiles", Tiles).WithSummary("Vector tiles of one taxon, several with commas between, or all, as one PMTiles archive for any static host.").Produces<byte[]>(contentType: PresenceArchive.MediaType);
    }

    public static void MapRecordExports(this RouteGroupBuilder personal) =>
        personal.MapGet("/exports/records", Records).WithTags("Exports").WithSummary("Single records: csv, csvw, geojson, gpkg, parquet or dwca. The public gets them without sensitive species and people.").Produces<ExportSize>().AlsoProduces<CsvwShape>(ExportFormat.Csvw.MediaType());

    private static Task<IResult> Presence(
        HttpContext http, CurrentData current, DataFolder folder, ExportFolder kept, [AsParameters] ExportParameters asked, CancellationToken cancel) =>
        AnswerAsync(http, folder, kept, ExportAsk.Read(current.At(asked.Edition), ExportTables.Presence, asked.Parts), asked, cancel);

    private static Task<IResult> Effort(
        HttpContext http, CurrentData current, DataFolder folder, ExportFolder kept, [AsParameters] ExportParameters asked, CancellationToken cancel) =>
        AnswerAsync(http, folder, kept, ExportAsk.Read(current.At(asked.Edition), ExportTables.Effort, asked.Parts), asked, cancel);

    private static Task<IResult> Records(
        HttpContext http, AccessRules rules, CurrentData current, DataFolder folder, ExportFolder kept, [AsParameters] ExportParameters asked, CancellationToken cancel)
    {
        var inFull = rules.CallerOf(http).May(Right.Review);
        return AnswerAsync(http, folder, kept, ExportAsk.Read(current.At(asked.Edition), ExportTables.Records, asked.Parts, inFull), asked, cancel);
    }

    private static async Task<IResult> Tiles(
        HttpContext http, CurrentData current, DataFolder folder, ExportFolder kept, CancellationToken cancel,
        string? taxon = null, string? group = null, string? grid = null, string? periods = null, string? quality = null, string? edition = null)
    {
        var data = current.At(edition);
        var question = ExportAsk.Read(data, ExportTables.Presence, new() { Taxon = taxon, Group = group, Grid = grid, Quality = quality });
        var list = Ask.Periods(periods);
        var key = $"{KeyOf(question)}\ntiles\n{periods}";
        var (path, tag) = await kept.GetOrMakeAsync(key, ".pmtiles", file => MakeTiles.WriteAsync(folder, question, list, file, null, cancel), cancel);
        return Send(http, path, tag, PresenceArchive.MediaType, FileNames.Of("tiles", question.Taxa, question.OfAll, question.Size, data) + ".pmtiles");
    }

    private static async Task<IResult> AnswerAsync(HttpContext http, DataFolder folder, ExportFolder kept, ExportQuestion question, ExportParameters asked, CancellationToken cancel)
    {
        var format = ExportAsk.Format(asked.Format, question.Table);
        if (asked.Count == true)
            return Results.Json(await EstimateSize.OfAsync(folder, question, format, cancel), CommandContext.Json);
        var (path, tag) = await kept.GetOrMakeAsync(
            $"{KeyOf(question)}\n{format}", format.Ending(), file => MakeExport.WriteAsync(folder, question, format, file, null, cancel), cancel);
        if (format == ExportFormat.Csv)
            http.Response.Headers.Link = $"<{http.Request.PathBase}{http.Request.Path}{Described(http.Request)}>; rel=\"describedby\"; type=\"application/csvm+json\"";
        return Send(http, path, tag, format.MediaType(), FileNames.Of(question, format));
    }

    private static QueryString Described(HttpRequest request) =>
        QueryString.Create(request.Query.Where(pair => pair.Key != "format").Append(new("format", ExportFormat.Csvw.Word())));

    /// <summary>Sends a kept file, whole or in parts.</summary>
    public static IResult Send(HttpContext http, string path, string tag, string mediaType, string name)
    {
        // Packed on the way, the parts of a resumed download would not fit together.
        http.Response.Headers.ContentEncoding = "identity";
        http.Response.Headers.AccessControlExposeHeaders = "Content-Range, Content-Length, ETag, Link";
        return Results.File(path, mediaType, name, entityTag: new($"\"{tag}\""), enableRangeProcessing: true);
    }

    /// <summary>All that the content of an export follows from; the time tells apart the same number of another data folder.</summary>
    private static string KeyOf(ExportQuestion question) =>
        $"{typeof(ExportEndpoints).Assembly.GetName().Version}\n{question.Data.FrozenId}\n{question.Data.Edition.Number}\n{question.Data.Edition.MadeAt}\n{string.Join('\n', question.Words().Select(word => $"{word.Key}={word.Value}"))}\n{question.Size}";
}

/// <summary>The parameters of an export.</summary>
/// <param name="Taxon">Identifiers or scientific names with commas between; all taxa where none is named.</param>
/// <param name="Group">Group of taxa.</param>
/// <param name="Grid">Side of the squares.</param>
/// <param name="From">First year or day.</param>
/// <param name="To">Last year or day.</param>
/// <param name="Quality">usable, confirmed or all.</param>
/// <param name="Region">Region that squares lie in or touch.</param>
/// <param name="Bbox">Degrees: west,south,east,north.</param>
/// <param name="Format">The format.</param>
/// <param name="Edition">Frozen edition; the live state where none is named.</param>
/// <param name="Count">True for the size beforehand in place of the file.</param>
internal sealed record ExportParameters(
    string? Taxon = null, string? Group = null, string? Grid = null, string? From = null, string? To = null, string? Quality = null, string? Region = null, string? Bbox = null,
    string? Format = null, string? Edition = null, bool? Count = null)
{
    /// <summary>The parts that choose rows.</summary>
    public ExportParts Parts => new() { Taxon = Taxon, Group = Group, Grid = Grid, From = From, To = To, Quality = Quality, Region = Region, Bbox = Bbox };
}
