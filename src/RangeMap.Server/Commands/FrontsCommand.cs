using System.CommandLine;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary><c>rangemap fronts</c>: lines of a spreading taxon's front, as GeoJSON.</summary>
internal static class FrontsCommand
{
    public static Command Make(CommandContext context)
    {
        var taxon = new Argument<string>("taxon") { Description = "Identifier or scientific name." };
        var years = new Option<string?>("--years")
        {
            Description = "Years with commas between them, or a span such as 2005/2015; every fifth year and the one after the last visits where none are named.", HelpName = "LIST",
        };
        var command = new Command("fronts", "Write the front of a spreading taxon in each year, with the band in which it lies, as GeoJSON.")
        {
            taxon, years, CommonOptions.Grid, CommonOptions.Output, CommonOptions.Data,
        };
        command.SetAction(async (parsed, cancel) =>
        {
            var data = new CurrentData(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)).Database, context.Clock).Now();
            var (found, size) = (data.Find(parsed.GetRequiredValue(taxon)), Ask.Size(parsed.GetValue(CommonOptions.Grid)));
            var (fronts, now) = DrawFronts.Answer(data, found, size, parsed.GetValue(years));
            await context.DeliverAsync(parsed.GetValue(CommonOptions.Output), to => FrontsGeoJson.WriteAsync(to, size, fronts, now, Caption.Of(data, found), cancel));
        });
        return command;
    }
}
