using System.Globalization;
using System.Text.Json.Nodes;
using YamlDotNet.RepresentationModel;

namespace RangeMap.Server.Tests.Standards;

/// <summary>Reads a schema file, JSON or YAML, as JSON.</summary>
internal static class SchemaFile
{
    /// <summary>Its content.</summary>
    public static JsonNode Read(string path)
    {
        using var text = new StreamReader(path);
        if (Path.GetExtension(path) != ".yaml")
            return JsonNode.Parse(text.ReadToEnd())!;
        var yaml = new YamlStream();
        yaml.Load(text);
        return Convert(yaml.Documents[0].RootNode)!;
    }

    private static JsonNode? Convert(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Select(pair => new KeyValuePair<string, JsonNode?>(((YamlScalarNode)pair.Key).Value!, Convert(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Select(Convert)]),
        YamlScalarNode { Style: YamlDotNet.Core.ScalarStyle.Plain } scalar => Plain(scalar.Value!),
        YamlScalarNode scalar => scalar.Value,
        _ => throw new InvalidDataException($"{node} has no counterpart in JSON."),
    };

    /// <summary>A word without quotes. "null" stays a word: in schemas it stands for the type of that name.</summary>
    private static JsonNode Plain(string text) => text switch
    {
        "true" => true,
        "false" => false,
        _ when long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole) => whole,
        _ when double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) => number,
        _ => text,
    };
}
