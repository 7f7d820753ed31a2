using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace RangeMap.Server;

/// <summary>What the framework cannot see of the answers' shapes: numbers that are never texts, words that a text may be, members with numbered names.</summary>
internal static class SchemaDescription
{
    public static Task Complete(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancel)
    {
        NumbersAreNumbers(schema);
        if (context.JsonPropertyInfo?.AttributeProvider?.GetCustomAttributes(typeof(WordsAttribute), inherit: false) is [WordsAttribute words, ..])
            OneOf(schema, words.Words);
        // In the shapes of GeoJSON an array of numbers is a position: longitude and latitude.
        if (context.JsonTypeInfo.Type == typeof(double[]))
            schema.MinItems = schema.MaxItems = 2;
        if (context.JsonTypeInfo.Type == typeof(PresenceSquareShape))
            CountsByPeriod(schema);
        if (context.JsonTypeInfo.Type == typeof(FrontGeometry))
            LinesOrAreas(schema);
        if (context.JsonTypeInfo.Type == typeof(MappingFileShape) && schema.Properties?["columns"] is OpenApiSchema { AdditionalProperties: OpenApiSchema term })
            term.Type |= JsonSchemaType.Null;
        return Task.CompletedTask;
    }

    /// <summary>A reader of questions takes "7" for 7; answers are always numbers.</summary>
    private static void NumbersAreNumbers(OpenApiSchema schema)
    {
        if (schema.Type is not { } type || (type & (JsonSchemaType.Integer | JsonSchemaType.Number)) == 0 || !type.HasFlag(JsonSchemaType.String))
            return;
        schema.Type = type & ~JsonSchemaType.String;
        schema.Pattern = null;
    }

    private static void OneOf(OpenApiSchema schema, IReadOnlyList<string> words)
    {
        schema.Enum = [.. words.Select(word => (JsonNode)JsonValue.Create(word))];
        if (schema.Type?.HasFlag(JsonSchemaType.Null) == true)
            schema.Enum.Add(JsonNullSentinel.JsonNull);
    }

    private static void LinesOrAreas(OpenApiSchema schema)
    {
        (schema.Type, schema.Properties, schema.Required) = (null, null, null);
        schema.OneOf = [Geometry("MultiLineString", depth: 2), Geometry("MultiPolygon", depth: 3)];
    }

    /// <summary>A geometry of positions within so many arrays.</summary>
    private static OpenApiSchema Geometry(string type, int depth)
    {
        var coordinates = new OpenApiSchema { Type = JsonSchemaType.Array, MinItems = 2, MaxItems = 2, Items = new OpenApiSchema { Type = JsonSchemaType.Number } };
        for (var i = 0; i < depth; i++)
            coordinates = new() { Type = JsonSchemaType.Array, Items = coordinates };
        var word = new OpenApiSchema { Type = JsonSchemaType.String };
        OneOf(word, [type]);
        return new()
        {
            Type = JsonSchemaType.Object,
            Required = new HashSet<string> { "type", "coordinates" },
            Properties = new Dictionary<string, IOpenApiSchema> { ["type"] = word, ["coordinates"] = coordinates },
        };
    }

    /// <summary>p0, p1 ... and v0, v1 ...: as many as there are periods, left out where they are 0.</summary>
    private static void CountsByPeriod(OpenApiSchema schema) => schema.PatternProperties = new Dictionary<string, IOpenApiSchema>
    {
        ["^[pv][0-9]+$"] = new OpenApiSchema { Type = JsonSchemaType.Integer, Description = "Records (p) and visits (v) of the period of this index." },
    };
}
