using System.Text.Json.Nodes;
using RangeMap.Grids;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>The documents that describe the OGC interface.</summary>
internal static class OgcDocuments
{
    private const string Crs84 = "http://www.opengis.net/def/crs/OGC/1.3/CRS84", Gregorian = "http://www.opengis.net/def/uom/ISO-8601/0/Gregorian";

    private static readonly string[] Classes =
    [
        .. ((string[])["core", "geojson", "html", "oas30"]).Select(name => $"http://www.opengis.net/spec/ogcapi-features-1/1.0/conf/{name}"),
        .. ((string[])["core", "tileset", "tilesets-list", "geodata-tilesets", "mvt"]).Select(name => $"http://www.opengis.net/spec/ogcapi-tiles-1/1.0/conf/{name}"),
    ];

    public static JsonObject Landing(OgcLinks links) => new()
    {
        ["title"] = "RangeMap",
        ["description"] = "Species by national grid square and year, first arrivals and recording effort.",
        ["links"] = new JsonArray(
        [
            .. links.Self("/", OgcLinks.Json),
            links.To("/api", "service-desc", OgcApiDescription.MediaType, "The interface described (OpenAPI 3.0)"),
            links.To("/conformance", "conformance", OgcLinks.Json, "Conformance classes"),
            links.To("/collections", "data", OgcLinks.Json, "Collections"),
            links.ToOgc("/collections/presence/tiles", "tilesets-vector", OgcLinks.Json, "Vector tiles"),
            links.ToOgc("/tileMatrixSets", "tiling-schemes", OgcLinks.Json, "Tile matrix sets"),
        ]),
    };

    public static JsonObject Conformance() => new() { ["conformsTo"] = new JsonArray([.. Classes.Select(name => (JsonNode)name)]) };

    public static JsonObject Collections(OgcLinks links, DataSnapshot data) => new()
    {
        ["links"] = new JsonArray([.. links.Self("/collections", OgcLinks.Json)]),
        ["collections"] = new JsonArray([.. OgcCollection.All.Select(collection => Collection(links, data, collection))]),
    };

    public static JsonObject Collection(OgcLinks links, DataSnapshot data, OgcCollection collection)
    {
        var path = $"/collections/{collection.Id}";
        var tiles = collection.Table == ExportTables.Presence ? (JsonNode[])[links.ToOgc($"{path}/tiles", "tilesets-vector", OgcLinks.Json, "Vector tiles")] : [];
        var document = new JsonObject
        {
            ["id"] = collection.Id,
            ["title"] = collection.Table.Title,
            ["description"] = collection.Table.Description,
            ["itemType"] = "feature",
            ["crs"] = new JsonArray(Crs84),
            ["links"] = new JsonArray(
            [
                .. links.Self(path, OgcLinks.Json),
                links.To($"{path}/items", "items", OgcLinks.GeoJson, "The features"),
                links.To($"{path}/items?f=html", "items", OgcLinks.Html, "The features as a page"),
                links.ToOgc($"{path}/queryables", "queryables", "application/schema+json", "Properties to filter by"),
                .. tiles,
            ]),
        };
        if (Extent(data) is { } extent)
            document["extent"] = extent;
        return document;
    }

    public static JsonObject Queryables(OgcLinks links, OgcCollection collection) => new()
    {
        ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
        ["$id"] = $"{links.Root}/collections/{collection.Id}/queryables",
        ["type"] = "object",
        ["title"] = collection.Table.Title,
        ["properties"] = new JsonObject(collection.Table.Columns.Select(column => new KeyValuePair<string, JsonNode?>(column.Name, SchemaOf(column)))),
    };

    /// <summary>A column as a JSON schema.</summary>
    public static JsonObject SchemaOf(ExportColumn column)
    {
        var type = column.Kind switch { ExportKind.Whole => "integer", ExportKind.Number => "number", ExportKind.Truth => "boolean", _ => "string" };
        var schema = new JsonObject { ["type"] = type, ["description"] = column.Description };
        if (column.Kind == ExportKind.Day)
            schema["format"] = "date";
        return schema;
    }

    /// <summary>Boxes and years of all data, wide enough for squares of every size; null without data.</summary>
    private static JsonObject? Extent(DataSnapshot data)
    {
        var years = data.Summaries.Where(summary => summary.FirstYear is not null).ToList();
        var squares = ArrivalRows.OfAll(data, SquareSize.Km100, Presence.Quality.All).Squares;
        if (years.Count == 0 || squares.Count == 0)
            return null;
        var box = squares.Select(square => DegreeBox.Of(square.Square)).Aggregate((a, b) => new(Math.Min(a.West, b.West), Math.Min(a.South, b.South), Math.Max(a.East, b.East), Math.Max(a.North, b.North)));
        return new()
        {
            ["spatial"] = new JsonObject { ["bbox"] = new JsonArray(new JsonArray([.. ((double[])[box.West, box.South, box.East, box.North]).Select(degrees => (JsonNode)Math.Round(degrees, 6))])), ["crs"] = Crs84 },
            // Undated spans reach beyond the certain years: the beginning stays open.
            ["temporal"] = new JsonObject { ["interval"] = new JsonArray(new JsonArray(null, FormattableString.Invariant($"{years.Max(summary => summary.LastYear):0000}-12-31T23:59:59Z"))), ["trs"] = Gregorian },
        };
    }
}
