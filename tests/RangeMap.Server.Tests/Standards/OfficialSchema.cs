using System.Text.Json.Nodes;
using Json.Schema;

namespace RangeMap.Server.Tests.Standards;

/// <summary>A schema of a standard with every file that it refers to, as one document, so that nothing is fetched while answers are checked.</summary>
internal sealed class OfficialSchema
{
    /// <summary>Schemas that files name by address, and the file that has them. Older than asked for, but no answer here states a coordinate system by it.</summary>
    private static readonly Dictionary<string, string> ByAddress = new() { ["https://proj.org/schemas/v0.7/projjson.schema.json"] = "tms-2.0/projJSON.json" };

    /// <summary>
    /// The schema of further dimensions says in words that it is for those beside space and time, but "additionalProperties" does not see what the neighbour in the same
    /// "allOf" describes, and so would ask of space and time what the schema of these forbids. The words are taken as what is meant.
    /// </summary>
    private const string BeyondExtents = "beyond those described in temporal and spatial.";

    private readonly JsonObject _parts = [];
    private readonly JsonSchema _schema;

    private OfficialSchema(string file, string inside)
    {
        Gather(file);
        _schema = JsonSchema.FromText(new JsonObject { ["$ref"] = $"#/$defs/{Escaped(file)}{inside}", ["$defs"] = _parts }.ToJsonString());
    }

    /// <summary>The schema of a file, or of a part of it.</summary>
    /// <param name="file">Its path in the folder of schemas.</param>
    /// <param name="inside">JSON pointer to the part.</param>
    public static OfficialSchema Of(string file, string inside = "") => new(file, inside);

    /// <summary>Fails with every place where an answer is not as the schema asks.</summary>
    public void MustHold(JsonNode answer, string what)
    {
        var result = _schema.Evaluate(answer, new() { OutputFormat = OutputFormat.List, RequireFormatValidation = true });
        var wrong = result.Details.Where(detail => detail.HasErrors).Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}");
        Assert.True(result.IsValid, $"{what} is not as the standard asks:\n{string.Join('\n', wrong)}");
    }

    /// <summary>Takes a file in under its own name, with those that it refers to.</summary>
    private void Gather(string file)
    {
        if (_parts.ContainsKey(file))
            return;
        var content = SchemaFile.Read(SchemaFolder.File(file));
        _parts[file] = content;
        // An OpenAPI document keeps its schemas in a part of its own; the rest of it describes addresses.
        if (content["components"] is { } components)
            _parts[file] = new JsonObject { ["$defs"] = components["schemas"]!.DeepClone(), ["responses"] = components["responses"]!.DeepClone() };
        Redirect(_parts[file], file);
    }

    private void Redirect(JsonNode? node, string file)
    {
        if (node is JsonArray list)
        {
            foreach (var entry in list)
                Redirect(entry, file);
        }

        if (node is not JsonObject members)
            return;
        members.Remove("$id");
        members.Remove("$schema");
        // OpenAPI 3.0 has no type of null and says so beside the type.
        if (members["nullable"]?.GetValueKind() == System.Text.Json.JsonValueKind.True && members["type"] is JsonValue type)
            members["type"] = new JsonArray((string)type!, "null");
        if (members["additionalProperties"] is JsonObject further && ((string?)further["description"])?.EndsWith(BeyondExtents, StringComparison.Ordinal) == true)
            members["properties"] = new JsonObject { ["spatial"] = true, ["temporal"] = true };
        foreach (var (name, value) in members.ToList())
        {
            if (name == "$ref" && value is JsonValue)
                members[name] = Target((string)value!, file);
            else
                Redirect(value, file);
        }
    }

    private string Target(string reference, string file)
    {
        var parts = reference.Split('#');
        var other = parts[0].Length == 0 ? file : ByAddress.GetValueOrDefault(parts[0]) ?? Path.Combine(Path.GetDirectoryName(file)!, parts[0]).Replace('\\', '/');
        Gather(other);
        return $"#/$defs/{Escaped(other)}{(parts.Length > 1 ? parts[1] : "").Replace("/components/schemas/", "/$defs/", StringComparison.Ordinal)}";
    }

    /// <summary>A name as a part of a JSON pointer (RFC 6901).</summary>
    private static string Escaped(string name) => name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
}
