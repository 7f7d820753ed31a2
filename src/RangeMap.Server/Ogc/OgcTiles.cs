using System.Text.Json.Nodes;
using RangeMap.Grids;
using RangeMap.Maps;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>Vector tiles of the collection of presence: of one taxon where taxonID names it, else of all taxa together.</summary>
internal static class OgcTiles
{
    private const SquareSize Size = SquareSize.Km10;

    /// <summary>The tile sets.</summary>
    public static JsonObject Sets(OgcLinks links, string? taxon) => new()
    {
        ["links"] = new JsonArray([.. links.Self("/collections/presence/tiles" + Query(taxon), OgcLinks.Json)]),
        ["tilesets"] = new JsonArray([.. TileMatrixSet.All.Select(set => Short(links, set, taxon))]),
    };

    /// <summary>A tile set in full (OGC Two Dimensional Tile Matrix Set and Tile Set Metadata 2.0).</summary>
    public static JsonObject Set(OgcLinks links, DataSnapshot data, TileMatrixSet set, string? taxon)
    {
        var document = Short(links, set, taxon);
        var path = $"/collections/presence/tiles/{set.Id}";
        ((JsonArray)document["links"]!).Add(new JsonObject
        {
            ["href"] = $"{links.Root}{path}/{{tileMatrix}}/{{tileRow}}/{{tileCol}}{Query(taxon)}",
            ["rel"] = "item",
            ["type"] = TileEndpoints.MediaType,
            ["templated"] = true,
            ["title"] = "A tile",
        });
        document["attribution"] = string.Join("; ", Credits.All);
        document["layers"] = new JsonArray(new JsonObject { ["id"] = PresenceTiles.LayerName, ["dataType"] = "vector", ["geometryDimension"] = 2 });
        var tiles = Tiles(data, set, taxon);
        document["tileMatrixSetLimits"] = new JsonArray([.. Enumerable.Range(0, set.MaxZoom + 1).Select(zoom => tiles.Covering(zoom)).OfType<TileRange>().Select(Limits)]);
        return document;
    }

    /// <summary>A tile; one without squares has no bytes.</summary>
    /// <exception cref="UserException">There is no such tile.</exception>
    public static ReadyTile Draw(DataSnapshot data, TileMatrixSet set, string? taxon, int zoom, int row, int column) => set.Contains(zoom, column, row)
        ? new(Tiles(data, set, taxon).Draw(zoom, column, row))
        : throw new UserException($"{set.Id} has no tile {zoom}/{row}/{column}.", "tile", "Use a level, row and column of the tile matrix set.", StatusCodes.Status404NotFound);

    private static PresenceTiles Tiles(DataSnapshot data, TileMatrixSet set, string? taxon)
    {
        var found = taxon is null ? null : data.Find(taxon);
        return data.Answers.GetOrMake(("ogc tiles", set.Id, found?.Number), () => new PresenceTiles(
            found is null ? ArrivalRows.OfAll(data, Size, Quality.Usable) : AnswerPresence.Answer(data, new(found, Size, Quality.Usable, "")), set));
    }

    private static JsonObject Short(OgcLinks links, TileMatrixSet set, string? taxon)
    {
        var document = new JsonObject
        {
            ["title"] = $"Presence in {set.Id}",
            ["dataType"] = "vector",
            ["crs"] = FormattableString.Invariant($"http://www.opengis.net/def/crs/EPSG/0/{set.Plane.Epsg}"),
            ["links"] = new JsonArray(
                links.To($"/collections/presence/tiles/{set.Id}{Query(taxon)}", "self", OgcLinks.Json, "This tile set"),
                links.ToOgc($"/tileMatrixSets/{set.Id}", "tiling-scheme", OgcLinks.Json, "Its tile matrix set")),
        };
        if (set.Id == TileMatrixSet.WebMercatorQuad.Id)
            document["tileMatrixSetURI"] = "http://www.opengis.net/def/tilematrixset/OGC/1.0/WebMercatorQuad";
        return document;
    }

    private static JsonNode Limits(TileRange range) => new JsonObject
    {
        ["tileMatrix"] = range.Zoom.ToString(System.Globalization.CultureInfo.InvariantCulture),
        ["minTileRow"] = range.FirstRow,
        ["maxTileRow"] = range.LastRow,
        ["minTileCol"] = range.FirstColumn,
        ["maxTileCol"] = range.LastColumn,
    };

    private static string Query(string? taxon) => taxon is null ? "" : $"?taxonID={Uri.EscapeDataString(taxon)}";
}
