using System.Text.Json.Nodes;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>OGC API - Features Part 1 and OGC API - Tiles Part 1 over the same data. Everyone sees here what the public may see.</summary>
internal static class OgcEndpoints
{
    public static void MapOgc(this RouteGroupBuilder ogc)
    {
        ogc.WithTags("OGC API");
        ogc.MapGet("/", (HttpContext http) => Plain(http, OgcDocuments.Landing(new(http.Request)), "RangeMap")).WithSummary("Landing page.");
        ogc.MapGet("/conformance", (HttpContext http) => Plain(http, OgcDocuments.Conformance(), "Conformance")).WithSummary("Conformance classes.");
        ogc.MapGet("/api", (HttpContext http) => Results.Text(OgcApiDescription.Of(new(http.Request)).ToJsonString(), OgcApiDescription.MediaType)).WithSummary("This interface in OpenAPI 3.0, with the filters of every collection.");
        ogc.MapGet("/collections", (HttpContext http, CurrentData current) => Plain(http, OgcDocuments.Collections(new(http.Request), current.Now()), "Collections")).WithSummary("The collections.");
        var one = ogc.MapGroup("/collections/{collectionId}");
        one.MapGet("", (HttpContext http, CurrentData current, string collectionId) => Plain(http, OgcDocuments.Collection(new(http.Request), current.Now(), OgcCollection.Find(collectionId)), collectionId)).WithSummary("A collection.");
        one.MapGet("/queryables", Queryables).WithSummary("The properties of a collection's features, by each of which they can be filtered.");
        one.MapGet("/items", Items).WithSummary("Features by bbox, datetime and any property, limit at a time.");
        one.MapGet("/items/{featureId}", Item).WithSummary("A feature.");
        var tiles = ogc.MapGroup("/collections/{collectionId}/tiles");
        tiles.MapGet("", TileSets).WithSummary("The tile sets of a collection.");
        tiles.MapGet("/{tileMatrixSetId}", TileSet).WithSummary("A tile set.");
        tiles.MapGet("/{tileMatrixSetId}/{tileMatrix}/{tileRow}/{tileCol}", Tile).WithSummary("A vector tile; an empty one has no bytes.").Produces<byte[]>(contentType: TileEndpoints.MediaType);
    }

    private static IResult Queryables(HttpContext http, string collectionId) =>
        Answer(http, OgcDocuments.Queryables(new(http.Request), OgcCollection.Find(collectionId)), "application/schema+json", "Queryables");

    private static IResult Items(HttpContext http, DataFolder folder, CurrentData current, string collectionId)
    {
        var collection = OgcCollection.Find(collectionId);
        var query = OgcQuery.Of(collection, http.Request.Query);
        return Answer(http, OgcFeatures.Page(new(http.Request), http.Request, folder, current.Now(), collection, query), OgcLinks.GeoJson, collection.Table.Title);
    }

    private static IResult Item(HttpContext http, DataFolder folder, CurrentData current, string collectionId, string featureId)
    {
        OgcQuery.Check(http.Request.Query, ["f"]);
        var collection = OgcCollection.Find(collectionId);
        var row = OgcItems.One(folder, current.Now(), collection, featureId)
            ?? throw new UserException($"There is no feature '{featureId}'.", "featureId", $"/ogc/collections/{collection.Id}/items lists them.", StatusCodes.Status404NotFound);
        return Answer(http, OgcFeatures.One(new(http.Request), collection, row), OgcLinks.GeoJson, featureId);
    }

    private static IResult TileSets(HttpContext http, string collectionId) =>
        Plain(http, OgcTiles.Sets(WithTiles(http, collectionId), Taxon(http)), "Tile sets", "taxonID");

    private static IResult TileSet(HttpContext http, CurrentData current, string collectionId, string tileMatrixSetId) =>
        Plain(http, OgcTiles.Set(WithTiles(http, collectionId), current.Now(), SetOf(tileMatrixSetId), Taxon(http)), tileMatrixSetId, "taxonID");

    private static TileAnswer Tile(HttpContext http, CurrentData current, string collectionId, string tileMatrixSetId, string tileMatrix, string tileRow, string tileCol)
    {
        WithTiles(http, collectionId);
        OgcQuery.Check(http.Request.Query, ["taxonID"]);
        var data = current.Now();
        return new TileAnswer(OgcTiles.Draw(data, SetOf(tileMatrixSetId), Taxon(http), Number(tileMatrix), Number(tileRow), Number(tileCol)), data, TileEndpoints.MediaType);
    }

    private static OgcLinks WithTiles(HttpContext http, string collectionId) => OgcCollection.Find(collectionId).Table == Maps.ExportTables.Presence
        ? new(http.Request)
        : throw new UserException($"The collection '{collectionId}' has no tiles.", "collectionId", "The collection presence has some.", StatusCodes.Status404NotFound);

    private static TileMatrixSet SetOf(string id) => TileMatrixSet.Find(id)
        ?? throw new UserException($"There is no tile matrix set '{id}'.", "tileMatrixSetId", "/ogc/tileMatrixSets lists them.", StatusCodes.Status404NotFound);

    /// <summary>What is no number is no tile.</summary>
    private static int Number(string text) => int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : -1;

    private static string? Taxon(HttpContext http) => http.Request.Query.TryGetValue("taxonID", out var taxon) ? taxon.ToString() : null;

    private static IResult Plain(HttpContext http, JsonObject document, string title, params string[] parameters)
    {
        OgcQuery.Check(http.Request.Query, [.. parameters, "f"]);
        return Answer(http, document, OgcLinks.Json, title);
    }

    private static IResult Answer(HttpContext http, JsonObject document, string type, string title) => WantsPage(http.Request)
        ? Results.Text(OgcHtml.Page(document, title), "text/html; charset=utf-8")
        : Results.Text(document.ToJsonString(), type);

    /// <summary>A page where f says so, or where a browser asks.</summary>
    private static bool WantsPage(HttpRequest request)
    {
        request.HttpContext.Response.Headers.Vary = "Accept";
        var accepted = request.Headers.Accept.ToString();
        return request.Query["f"].ToString() switch
        {
            "html" => true,
            "json" => false,
            "" => accepted.Contains("text/html", StringComparison.OrdinalIgnoreCase) && !accepted.Contains("json", StringComparison.OrdinalIgnoreCase),
            var other => throw new UserException($"'{other}' is no form of answers.", "f", "Use json or html."),
        };
    }
}
