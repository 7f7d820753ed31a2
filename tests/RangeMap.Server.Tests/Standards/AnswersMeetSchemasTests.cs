using System.IO.Compression;
using System.Text.Json.Nodes;
using System.Xml;
using System.Xml.Schema;
using Parquet;
using RangeMap.Server.Tests.Http;

namespace RangeMap.Server.Tests.Standards;

/// <summary>Answers and files are as the official schemas of their standards ask.</summary>
public sealed class AnswersMeetSchemasTests(SmallWorld world) : IClassFixture<SmallWorld>
{
    private const string Features = "ogcapi-features-1/schemas/", Tiles = "ogcapi-tiles-1/ogcapi-tiles-1.bundled.json";

    private readonly RunningServer _server = world.Server;

    [Theory]
    [InlineData("", "landingPage.yaml")]
    [InlineData("conformance", "confClasses.yaml")]
    [InlineData("collections", "collections.yaml")]
    public async Task PagesOfTheFeaturesInterface(string page, string schema) => await MustHoldAsync($"/ogc/{page}", OfficialSchema.Of(Features + schema));

    [Fact]
    public async Task EveryCollectionItsFeaturesAndEachFeature()
    {
        var (one, page, feature) = (OfficialSchema.Of(Features + "collection.yaml"), OfficialSchema.Of(Features + "featureCollectionGeoJSON.yaml"), OfficialSchema.Of(Features + "featureGeoJSON.yaml"));
        foreach (var collection in OgcCollection.All.Select(collection => $"/ogc/collections/{collection.Id}"))
        {
            await MustHoldAsync(collection, one);
            var items = await MustHoldAsync($"{collection}/items?limit=3", page);
            foreach (var id in items["features"]!.AsArray().Select(item => item!.Text("id")))
                await MustHoldAsync($"{collection}/items/{Uri.EscapeDataString(id)}", feature);
        }
    }

    [Fact]
    public async Task AProblemIsOneAfterTheFeaturesStandardToo()
    {
        var problem = OfficialSchema.Of(Features + "exception.yaml");
        foreach (var (address, status) in ((string, System.Net.HttpStatusCode)[])[("/ogc/collections/nothing", System.Net.HttpStatusCode.NotFound), ("/ogc/collections/presence/items?limit=0", System.Net.HttpStatusCode.BadRequest)])
            problem.MustHold(await RunningServer.JsonAsync(_server.Client.GetAsync(address), status), address);
    }

    [Theory]
    [InlineData("", "/$defs/landingPage")]
    [InlineData("collections/presence", "/$defs/collectionInfo")]
    [InlineData("tileMatrixSets", "/responses/TileMatrixSetsList/content/application~1json/schema")]
    [InlineData("collections/presence/tiles", "/responses/TileSetsList/content/application~1json/schema")]
    [InlineData("collections/presence/tiles?taxonID=prima", "/responses/TileSetsList/content/application~1json/schema")]
    [InlineData("collections/presence/tiles/WebMercatorQuad", "/$defs/tileSet")]
    [InlineData("collections/presence/tiles/BritishNationalGrid?taxonID=prima", "/$defs/tileSet")]
    public async Task PagesOfTheTilesInterface(string page, string schema) => await MustHoldAsync($"/ogc/{page}", OfficialSchema.Of(Tiles, schema));

    [Theory]
    [InlineData("WebMercatorQuad")]
    [InlineData("BritishNationalGrid")]
    public async Task TileMatrixSets(string id) => await MustHoldAsync($"/ogc/tileMatrixSets/{id}", OfficialSchema.Of("tms-2.0/tileMatrixSet.json"));

    [Theory]
    [InlineData("")]
    [InlineData("?grid=1km&periods=../1999,2000/..&layers=presence,arrivals,effort")]
    public async Task TileJson(string question) => await MustHoldAsync($"/api/v1/taxa/prima/tiles.json{question}", OfficialSchema.Of("tilejson-3.0.0/schema.json"));

    [Theory]
    [InlineData("exports/presence?format=parquet")]
    [InlineData("exports/effort?format=parquet")]
    [InlineData("exports/records?format=parquet")]
    [InlineData("taxa/prima/presence?format=parquet")]
    public async Task WhatGeoParquetSaysOfItsGeometry(string address)
    {
        var schema = OfficialSchema.Of("geoparquet-1.1.0/schema.json");
        using var file = new MemoryStream(await _server.Client.GetByteArrayAsync($"/api/v1/{address}"));
        await using var reader = await ParquetReader.CreateAsync(file);
        schema.MustHold(JsonNode.Parse(reader.CustomMetadata["geo"])!, address);
    }

    [Fact]
    public async Task TheDescriptionOfAnArchiveOfRecords()
    {
        var schemas = new XmlSchemaSet();
        using (var text = XmlReader.Create(SchemaFolder.File("dwc-text/tdwg_dwc_text.xsd")))
            schemas.Add(null, text);
        using var zip = new ZipArchive(new MemoryStream(await _server.Client.GetByteArrayAsync("/api/v1/exports/records?format=dwca")));
        using var meta = XmlReader.Create(
            zip.GetEntry("meta.xml")!.Open(), new() { ValidationType = ValidationType.Schema, Schemas = schemas, ValidationFlags = XmlSchemaValidationFlags.ReportValidationWarnings });
        while (meta.Read())
            Assert.NotEqual(XmlSchemaValidity.Invalid, meta.SchemaInfo?.Validity);
    }

    [Fact]
    public void ASchemaThatIsNotMetIsNoticed()
    {
        var schema = OfficialSchema.Of(Features + "featureCollectionGeoJSON.yaml");
        var wrong = JsonNode.Parse("""{"type":"FeatureCollection","features":[{"type":"Feature","geometry":{"type":"Point","coordinates":["x"]},"properties":{}}],"numberReturned":-1}""")!;
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => schema.MustHold(wrong, "An invented page"));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => OfficialSchema.Of(Tiles, "/$defs/tileSet").MustHold(JsonNode.Parse("""{"dataType":"vector","crs":"x"}""")!, "An invented tile set"));
    }

    private async Task<JsonNode> MustHoldAsync(string address, OfficialSchema schema)
    {
        var answer = await _server.GetJsonAsync(address);
        schema.MustHold(answer, address);
        return answer;
    }
}
