using System.CommandLine;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap regions</c>: loads named polygons, for known areas and filters.</summary>
internal static class RegionsCommand
{
    public static Command Make(CommandContext context)
    {
        var file = new Argument<string?>("file") { Description = "GeoJSON feature collection of polygons in longitude and latitude; the regions are listed where none is named.", Arity = ArgumentArity.ZeroOrOne };
        var property = new Option<string>("--name-property") { Description = "Property that holds the name.", HelpName = "NAME", DefaultValueFactory = _ => RegionStore.NameProperty };
        var remove = new Option<string?>("--remove") { Description = "Remove a region.", HelpName = "NAME" };
        var command = new Command("regions", "Load named regions, list them, or remove one.") { file, property, remove, CommonOptions.Data };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(file) is { } path)
            {
                var loaded = LoadRegions.Run(DataFolder.Open(parsed.GetRequiredValue(CommonOptions.Data)), Ask.File(path), parsed.GetRequiredValue(property), context.Clock);
                context.Out.WriteLine($"{loaded.Count} {(loaded.Count == 1 ? "region" : "regions")} loaded: {string.Join(", ", loaded)}.");
                return;
            }

            var store = new RegionStore(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)).Database);
            if (parsed.GetValue(remove) is { } name && !store.Remove(name, context.Clock.GetUtcNow()))
                throw new UserException($"There is no region \"{name}\".", "--remove", "rangemap regions lists them.");
            foreach (var region in store.ReadAll())
                context.Out.WriteLine($"{region.Name}  (loaded {region.LoadedAt})");
        });
        return command;
    }
}
