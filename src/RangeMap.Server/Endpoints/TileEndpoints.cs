using System.Globalization;
using RangeMap.Grids;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Vector tiles of presence maps.</summary>
internal static class TileEndpoints
{
    /// <summary>The media type of Mapbox vector tiles.</summary>
    public const string MediaType = "application/vnd.mapbox-vector-tile";

    public static void MapTiles(this RouteGroupBuilder api)
    {
        var taxon = api.MapGroup("/taxa/{taxon}").WithTags("Tiles");
        taxon.MapGet("/tiles.json", TileJson).WithSummary("TileJSON 3.0.0 of the taxon's tiles in WebMercatorQuad, with the fields of the layers asked.");
        taxon.MapGet("/tiles/{tileMatrixSet}/{z:int}/{y:int}/{x:int}", Tile)
            .WithSummary("A vector tile: level, row, column. Sets: WebMercatorQuad and BritishNationalGrid. layers= names some of presence (alone where none is named), arrivals, fronts, forecast and effort. An empty tile has no bytes.")
            .Produces<byte[]>(contentType: MediaType);
    }

    private static TileAnswer Tile(CurrentData current, string taxon, string tileMatrixSet, int z, int y, int x, string? grid = null, string? periods = null, string? quality = null, string? layers = null, string? edition = null)
    {
        var set = TileMatrixSet.Find(tileMatrixSet)
            ?? throw new UserException($"There is no tile matrix set '{tileMatrixSet}'.", "tileMatrixSet", "Use WebMercatorQuad or BritishNationalGrid.", StatusCodes.Status404NotFound);
        var data = current.At(edition);
        return new TileAnswer(DrawTile.Answer(data, PresenceQuestion.Of(data, taxon, grid, periods, quality), LayerNames.Read(layers), set, z, y, x), data, MediaType);
    }

    private static IResult TileJson(CurrentData current, HttpRequest request, string taxon, string? grid = null, string? periods = null, string? quality = null, string? layers = null, string? edition = null)
    {
        if (!Uri.TryCreate($"{request.Scheme}://{request.Host}", UriKind.Absolute, out _))
            throw new UserException($"The request names the host '{request.Host}', which cannot stand in an address.", "Host", "Ask the server by its name.");
        var data = current.At(edition);
        var question = PresenceQuestion.Of(data, taxon, grid, periods, quality);
        var path = $"{request.PathBase}/api/v1/taxa/{Uri.EscapeDataString(question.Taxon.Id)}/tiles/{TileMatrixSet.WebMercatorQuad.Id}/{{z}}/{{y}}/{{x}}";
        var options = new TileJsonOptions($"{request.Scheme}://{request.Host}{path}{request.QueryString}", string.Join("; ", Credits.All), string.Create(CultureInfo.InvariantCulture, $"{data.Edition.Number}.0.0"));
        var names = LayerNames.Read(layers);
        options = options with
        {
            WithPresence = names.Contains(PresenceTiles.LayerName),
            Others = [.. names.Where(name => name != PresenceTiles.LayerName).Select(name => GatherLayers.Of(data, question, name, TileMatrixSet.WebMercatorQuad))],
        };
        var map = AnswerPresence.Answer(data, question);
        return Results.Stream(to => TileJsonDocument.WriteAsync(to, map, Caption.Of(data, question.Taxon), options), "application/json");
    }
}
