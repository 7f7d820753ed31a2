using System.Text.Json.Nodes;

namespace RangeMap.Server;

/// <summary>Absolute addresses and links of the OGC interface, as seen by the one who asks.</summary>
internal sealed class OgcLinks(HttpRequest request)
{
    public const string Json = "application/json", Html = "text/html", GeoJson = "application/geo+json";

    private const string Relations = "http://www.opengis.net/def/rel/ogc/1.0/";

    /// <summary>Where the interface begins.</summary>
    public string Root { get; } = RootOf(request);

    /// <summary>A link.</summary>
    public JsonObject To(string path, string relation, string type, string title) =>
        new() { ["href"] = Root + path, ["rel"] = relation, ["type"] = type, ["title"] = title };

    /// <summary>A link with a relation of the OGC register.</summary>
    public JsonObject ToOgc(string path, string relation, string type, string title) => To(path, Relations + relation, type, title);

    /// <summary>Links to the page itself and to its other form.</summary>
    public IEnumerable<JsonObject> Self(string path, string type)
    {
        yield return To(path, "self", type, "This document");
        yield return To(With(path, "f", "html"), "alternate", Html, "This document as a page");
    }

    /// <summary>The path with a parameter more.</summary>
    public static string With(string path, string name, string value) => $"{path}{(path.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{name}={Uri.EscapeDataString(value)}";

    private static string RootOf(HttpRequest request) => Uri.TryCreate($"{request.Scheme}://{request.Host}", UriKind.Absolute, out _)
        ? $"{request.Scheme}://{request.Host}{request.PathBase}/ogc"
        : throw new UserException($"The request names the host '{request.Host}', which cannot stand in an address.", "Host", "Ask the server by its name.");
}
