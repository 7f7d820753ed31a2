using System.Text.Json.Nodes;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>The OGC interface described in OpenAPI 3.0, with every filter of every collection, for clients that turn their filters into parameters only where these are described.</summary>
internal static class OgcApiDescription
{
    public const string MediaType = "application/vnd.oai.openapi+json;version=3.0";

    public static JsonObject Of(OgcLinks links)
    {
        var paths = new JsonObject
        {
            ["/"] = Get("The landing page", "landing", OgcLinks.Json, Form()),
            ["/conformance"] = Get("Conformance classes", "conformance", OgcLinks.Json, Form()),
            ["/collections"] = Get("The collections", "collections", OgcLinks.Json, Form()),
        };
        foreach (var collection in OgcCollection.All)
        {
            var path = $"/collections/{collection.Id}";
            paths[path] = Get(collection.Table.Title, collection.Id, OgcLinks.Json, Form());
            paths[$"{path}/queryables"] = Get("Properties to filter by", collection.Id + ".queryables", "application/schema+json");
            paths[$"{path}/items"] = Get("Features", collection.Id + ".items", OgcLinks.GeoJson, [.. Items(), .. collection.Table.Columns.Select(Filter), Form()]);
            paths[$"{path}/items/{{featureId}}"] = Get("A feature", collection.Id + ".item", OgcLinks.GeoJson, InPath("featureId", "string"), Form());
        }

        AddTiles(paths);
        return new()
        {
            ["openapi"] = "3.0.3",
            ["info"] = new JsonObject { ["title"] = "RangeMap: OGC API", ["version"] = "1.0.0" },
            ["servers"] = new JsonArray(new JsonObject { ["url"] = links.Root }),
            ["paths"] = paths,
        };
    }

    private static void AddTiles(JsonObject paths)
    {
        var taxon = Parameter("taxonID", "query", new() { ["type"] = "string" });
        const string Path = "/collections/presence/tiles";
        paths[Path] = Get("The tile sets", "presence.collection.vector.getTileSetsList", OgcLinks.Json, taxon, Form());
        paths[$"{Path}/{{tileMatrixSetId}}"] = Get("A tile set", "presence.collection.vector.getTileSet", OgcLinks.Json, InPath("tileMatrixSetId", "string"), taxon.DeepClone(), Form());
        paths[$"{Path}/{{tileMatrixSetId}}/{{tileMatrix}}/{{tileRow}}/{{tileCol}}"] = Get(
            "A tile", "presence.collection.vector.getTile", TileEndpoints.MediaType, InPath("tileMatrixSetId", "string"), InPath("tileMatrix", "string"), InPath("tileRow", "integer"), InPath("tileCol", "integer"), taxon.DeepClone());
    }

    private static JsonNode[] Items() =>
    [
        Parameter("limit", "query", new() { ["type"] = "integer", ["minimum"] = 1, ["maximum"] = OgcQuery.MostLimit, ["default"] = OgcQuery.DefaultLimit }),
        Parameter("offset", "query", new() { ["type"] = "integer", ["minimum"] = 0, ["default"] = 0 }),
        Listed(Parameter("bbox", "query", new() { ["type"] = "array", ["oneOf"] = new JsonArray(OfLength(4), OfLength(6)), ["items"] = new JsonObject { ["type"] = "number" } })),
        Listed(Parameter("datetime", "query", new() { ["type"] = "string" })),
    ];

    private static JsonObject OfLength(int count) => new() { ["minItems"] = count, ["maxItems"] = count };

    private static JsonObject Listed(JsonObject parameter)
    {
        (parameter["style"], parameter["explode"]) = ("form", false);
        return parameter;
    }

    private static JsonObject Filter(ExportColumn column) => Parameter(column.Name, "query", OgcDocuments.SchemaOf(column));

    private static JsonObject Form() => Parameter("f", "query", new() { ["type"] = "string", ["enum"] = new JsonArray("json", "html") });

    private static JsonObject InPath(string name, string type)
    {
        var parameter = Parameter(name, "path", new() { ["type"] = type });
        parameter["required"] = true;
        return parameter;
    }

    private static JsonObject Parameter(string name, string where, JsonObject schema) => new() { ["name"] = name, ["in"] = where, ["required"] = false, ["schema"] = schema };

    private static JsonObject Get(string summary, string operation, string type, params JsonNode[] parameters) => new()
    {
        ["get"] = new JsonObject
        {
            ["summary"] = summary,
            ["operationId"] = operation,
            ["parameters"] = new JsonArray(parameters),
            ["responses"] = new JsonObject
            {
                ["200"] = new JsonObject { ["description"] = summary, ["content"] = new JsonObject { [type] = new JsonObject() } },
                ["400"] = Problem("The question cannot be read"),
                ["404"] = Problem("Not found"),
            },
        },
    };

    private static JsonObject Problem(string what) => new() { ["description"] = what, ["content"] = new JsonObject { ["application/problem+json"] = new JsonObject() } };
}
