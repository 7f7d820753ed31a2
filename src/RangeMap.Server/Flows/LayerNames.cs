using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>The names of the layers that tiles can have.</summary>
internal static class LayerNames
{
    public const string Arrivals = "arrivals", Fronts = "fronts", Forecast = "forecast", Effort = "effort";

    private static readonly string[] All = [PresenceTiles.LayerName, Arrivals, Fronts, Forecast, Effort];

    private static readonly string[] PresenceOnly = [PresenceTiles.LayerName];

    /// <summary>The layers that a text names, in the order in which they stand in tiles; presence where none is named.</summary>
    /// <exception cref="UserException">There is no such layer.</exception>
    public static IReadOnlyList<string> Read(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return PresenceOnly;
        var named = text.Split(',', StringSplitOptions.TrimEntries);
        if (Array.Find(named, name => !All.Contains(name, StringComparer.Ordinal)) is { } unknown)
            throw new UserException($"Tiles have no layer '{unknown}'.", "layers", $"Name some of {string.Join(", ", All)}, with commas between them.") { IsArgument = true };
        return [.. All.Where(name => named.Contains(name, StringComparer.Ordinal))];
    }

    /// <summary>True where a list holds presence and nothing else.</summary>
    public static bool ArePresenceOnly(IReadOnlyList<string> names) => names is [PresenceTiles.LayerName];
}
