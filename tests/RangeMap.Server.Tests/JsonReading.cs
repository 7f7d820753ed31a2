using System.Text.Json.Nodes;

namespace RangeMap.Server.Tests;

/// <summary>Short ways into machine output.</summary>
internal static class JsonReading
{
    /// <summary>A whole number by its name.</summary>
    public static int Int(this JsonNode json, string name) => (int)json[name]!;

    /// <summary>A text by its name.</summary>
    public static string Text(this JsonNode json, string name) => (string)json[name]!;

    /// <summary>The names of an object's members.</summary>
    public static IEnumerable<string> Names(this JsonNode json) => json.AsObject().Select(member => member.Key);
}
