using RangeMap.Grids;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>The tile matrix sets, in the form of the OGC Two Dimensional Tile Matrix Set standard 2.0.</summary>
internal static class TileMatrixSetEndpoints
{
    public static void MapTileMatrixSets(this IEndpointRouteBuilder routes)
    {
        var sets = routes.MapGroup("/ogc/tileMatrixSets").WithTags("Tiles");
        sets.MapGet("/", All).WithSummary("The tile matrix sets.");
        sets.MapGet("/{id}", One).WithSummary("The definition of a tile matrix set.");
    }

    private static object All(HttpRequest request) => new
    {
        TileMatrixSets = TileMatrixSet.All.Select(set => new
        {
            set.Id,
            Links = new[] { new { Rel = "self", Type = "application/json", Href = $"{request.Scheme}://{request.Host}{request.PathBase}/ogc/tileMatrixSets/{set.Id}" } },
        }),
    };

    private static IResult One(string id)
    {
        var set = TileMatrixSet.Find(id)
            ?? throw new UserException($"There is no tile matrix set '{id}'.", "id", "/ogc/tileMatrixSets lists them.", StatusCodes.Status404NotFound);
        return Results.Stream(to => TileMatrixSetJson.WriteAsync(to, set), "application/json");
    }
}
