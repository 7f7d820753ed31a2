using System.CommandLine;

namespace RangeMap.Server;

/// <summary>Options that several commands share.</summary>
internal static class CommonOptions
{
    public static Option<string> Data { get; } = new("--data")
    {
        Description = "Folder that holds the data.",
        HelpName = "DIR",
        DefaultValueFactory = _ => DataFolder.DefaultPath,
    };

    public static Option<bool> Json { get; } = new("--json") { Description = "Write machine-readable JSON." };

    public static Option<string?> Grid { get; } = new("--grid") { Description = "Side of the squares: 10km, 5km, 2km, 1km, 100m.", HelpName = "SIZE" };

    public static Option<string?> Quality { get; } = new("--quality") { Description = "Which records count: usable, confirmed or all.", HelpName = "QUALITY" };

    public static Option<string?> Region { get; } = new("--region") { Description = "Nation, or region that was loaded, that reaches into the squares.", HelpName = "NAME" };

    public static Option<string?> Bbox { get; } = new("--bbox") { Description = "Box in degrees that squares touch: west,south,east,north.", HelpName = "BOX" };

    public static Option<string?> Output { get; } = new("--output", "-o") { Description = "File to write; standard output where none is named.", HelpName = "FILE" };
}
