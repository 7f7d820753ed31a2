using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace RangeMap.Server.Tests.Http;

/// <summary>
/// The description of the interface is true: what the demo answers fits it, with no member too few or too many; and the kept copy, from which the viewer's types are made, is the one
/// that is served. RANGEMAP_BLESS=1 keeps a changed description.
/// </summary>
public sealed class ApiDescriptionTests(DemoServer demo) : IClassFixture<DemoServer>
{
    private const string Arriving = "cindrava-adventa";
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // CSV on the Web has members that the description leaves to that standard.
    private static readonly string[] OpenShapes = ["CsvwShape"];

    [Fact]
    public async Task TheKeptDescriptionIsTheOneThatIsServed()
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "RangeMap.sln")))
            root = Path.GetDirectoryName(root)!;
        var kept = Path.Combine(root, "web", "api", "openapi.json");
        var served = (await DescriptionAsync()).ToJsonString(Readable).ReplaceLineEndings("\n") + "\n";
        if (Environment.GetEnvironmentVariable("RANGEMAP_BLESS") == "1")
            await File.WriteAllTextAsync(kept, served);
        Assert.True(served == await File.ReadAllTextAsync(kept), "web/api/openapi.json is not what the server describes. Run this test with RANGEMAP_BLESS=1, look at the difference, and build the viewer.");
    }

    [Theory]
    [InlineData("/about")]
    [InlineData("/taxa", "?q=ember&limit=5")]
    [InlineData("/taxa/{taxon}")]
    [InlineData("/taxa/{taxon}/presence", "?periods=../1999,2000/2009,2010/..")]
    [InlineData("/taxa/{taxon}/presence", "?region=England&bbox=-3,51,1,54")]
    [InlineData("/taxa/{taxon}/arrivals")]
    [InlineData("/taxa/{taxon}/arrivals", "?model=true")]
    [InlineData("/taxa/{taxon}/spread")]
    [InlineData("/taxa/{taxon}/spread", "?grid=100km")]
    [InlineData("/taxa/{taxon}/change", "?from=1995/2004&to=2015/2024")]
    [InlineData("/taxa/{taxon}/change", "?from=1995/2004&to=2015/2024&format=geojson")]
    [InlineData("/change", "?from=1995/2004&to=2015/2024")]
    [InlineData("/effort", "?from=1995/2004&to=2015/2024&taxon=cindrava-adventa")]
    [InlineData("/taxa/{taxon}/forecast")]
    [InlineData("/taxa/{taxon}/forecast", "?format=geojson")]
    [InlineData("/taxa/{taxon}/fronts")]
    [InlineData("/taxa/{taxon}/season")]
    [InlineData("/squares/{reference}", "?taxon=cindrava-adventa&periods=../1999,2000/..")]
    [InlineData("/places", "?q=york")]
    [InlineData("/regions")]
    [InlineData("/groups")]
    [InlineData("/doubts")]
    [InlineData("/exports/presence", "?count=true&taxon=cindrava-adventa")]
    [InlineData("/exports/effort", "?format=csvw")]
    [InlineData("/exports/records", "?format=csvw")]
    [InlineData("/imports")]
    [InlineData("/imports/{id}")]
    [InlineData("/imports/{id}/refusals")]
    [InlineData("/imports/{id}/names")]
    [InlineData("/imports/{id}/mapping.json")]
    [InlineData("/records", "?order=weight&limit=20")]
    [InlineData("/records/{record}")]
    [InlineData("/reviews")]
    [InlineData("/reviews/summary")]
    [InlineData("/me")]
    [InlineData("/names")]
    [InlineData("/taxon-changes")]
    [InlineData("/scheme")]
    [InlineData("/editions")]
    public async Task WhatTheDemoAnswersIsAsDescribed(string path, string query = "")
    {
        var (description, template) = (await DescriptionAsync(), "/api/v1" + path.Replace("{record}", "{id}", StringComparison.Ordinal));
        var address = $"/api/v1{path.Replace("{taxon}", Arriving, StringComparison.Ordinal).Replace("{reference}", "TA02", StringComparison.Ordinal).Replace("{id}", "1", StringComparison.Ordinal)}{query}";
        if (path.Contains("{record}", StringComparison.Ordinal))
            address = address.Replace("{record}", (await demo.GetAsync("/api/v1/records?order=weight&limit=1")).Json["records"]![0]!.Text("id"), StringComparison.Ordinal);
        var (answer, mediaType) = await demo.GetAsync(address);
        AssertFits(description, SchemaOf(description, template, "get", "200", mediaType), answer, address);
    }

    [Fact]
    public async Task WhatIsWrongIsFound()
    {
        // The test itself can fail: a member too many, a number for a text, and a word that is none.
        var description = await DescriptionAsync();
        var schema = SchemaOf(description, "/api/v1/about", "get", "200", "application/json");
        foreach (var wrong in (Action<JsonNode>[])[about => about["more"] = 1, about => about["name"] = 1, about => about.AsObject().Remove("periods")])
        {
            var about = (await demo.GetAsync("/api/v1/about")).Json;
            wrong(about);
            Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => AssertFits(description, schema, about, "about"));
        }
    }

    [Fact]
    public async Task ADecisionOnARecordIsAsDescribed()
    {
        var description = await DescriptionAsync();
        var record = (await demo.GetAsync("/api/v1/records?order=weight&limit=1")).Json["records"]![0]!;
        using var decided = await demo.Client.PostAsync($"/api/v1/records/{record.Text("id")}/reviews", Body("""{"status":"confirmed","reason":"Seen."}"""));
        AssertFits(description, SchemaOf(description, "/api/v1/records/{id}/reviews", "post", "200", "application/json"), JsonNode.Parse(await decided.Content.ReadAsStringAsync())!, "a decision");
        var history = (await demo.GetAsync("/api/v1/reviews")).Json;
        AssertFits(description, SchemaOf(description, "/api/v1/reviews", "get", "200", "application/json"), history, "decisions");
        Assert.NotEmpty(history["decisions"]!.AsArray());
    }

    [Fact]
    public async Task ASentFileAndItsPreviewAreAsDescribed()
    {
        var description = await DescriptionAsync();
        using var sent = await demo.Client.PostAsync("/api/v1/imports?dataset=described&file=few.csv", new StringContent("scientificName,gridReference,eventDate\nCindrava rufa,SE5013,2021-06-05\nCindrava nobody,SE5013,2021-06-05\n"));
        var upload = JsonNode.Parse(await sent.Content.ReadAsStringAsync())!;
        AssertFits(description, SchemaOf(description, "/api/v1/imports", "post", "201", "application/json"), upload, "a sent file");
        using var preview = await demo.Client.PostAsync($"/api/v1/imports/{upload.Text("id")}/preview", Body("""{"newTaxa":false}"""));
        AssertFits(description, SchemaOf(description, "/api/v1/imports/{id}/preview", "post", "200", "application/json"), JsonNode.Parse(await preview.Content.ReadAsStringAsync())!, "a preview");
        using var removed = await demo.Client.DeleteAsync($"/api/v1/imports/{upload.Text("id")}");
        Assert.Equal(System.Net.HttpStatusCode.NoContent, removed.StatusCode);
    }

    private static StringContent Body(string json) => new(json, System.Text.Encoding.UTF8, "application/json");

    private async Task<JsonNode> DescriptionAsync() => (await demo.GetAsync("/openapi/v1.json")).Json;

    private static JsonNode SchemaOf(JsonNode description, string path, string method, string status, string mediaType) =>
        description["paths"]![path]?[method]?["responses"]?[status]?["content"]?[mediaType]?["schema"] ?? throw new Xunit.Sdk.XunitException($"{method} {path} is not described to answer {status} with {mediaType}.");

    /// <summary>Fails where the answer does not fit; members that are not described do not fit either.</summary>
    private static void AssertFits(JsonNode description, JsonNode schema, JsonNode answer, string address)
    {
        var shapes = description["components"]!["schemas"]!.DeepClone();
        foreach (var (name, shape) in shapes.AsObject())
        {
            if (!OpenShapes.Contains(name) && shape!["properties"] is not null && shape["additionalProperties"] is null)
                shape["additionalProperties"] = false;
        }

        var whole = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["$defs"] = shapes, ["allOf"] = new JsonArray(schema.DeepClone()) };
        var read = JsonSchema.FromText(whole.ToJsonString().Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal));
        var found = read.Evaluate(answer, new() { OutputFormat = OutputFormat.List });
        Assert.True(found.IsValid, $"{address}: {string.Join("; ", found.Details.Where(detail => detail.Errors is not null).Select(detail => $"{detail.InstanceLocation} {string.Join(", ", detail.Errors!.Values)}").Take(5))}");
    }
}
