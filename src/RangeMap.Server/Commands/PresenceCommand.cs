using System.CommandLine;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary><c>rangemap presence</c>: where a taxon was found, per square and period.</summary>
internal static class PresenceCommand
{
    public static Command Make(CommandContext context)
    {
        var taxon = new Argument<string>("taxon") { Description = "Identifier or scientific name." };
        var periods = new Option<string?>("--periods") { Description = "ISO 8601 intervals with commas between them, such as ../1999,2000/2009,2010/.. ; all dates where none are named.", HelpName = "LIST" };
        var format = new Option<string>("--format") { Description = "csv or geojson; gpkg or parquet, to a file.", DefaultValueFactory = _ => "csv" };
        format.AcceptOnlyFromAmong("csv", "geojson", "gpkg", "parquet");
        var command = new Command("presence", "Write a presence map: one row a square and period, or GeoJSON.")
        {
            taxon, CommonOptions.Grid, periods, CommonOptions.Quality, CommonOptions.Region, CommonOptions.Bbox, format, ExportCommand.Edition, CommonOptions.Output, CommonOptions.Data, CommonOptions.Json,
        };
        command.SetAction(async (parsed, cancel) =>
        {
            var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
            var data = CurrentData.Of(folder, context.Clock).At(parsed.GetValue(ExportCommand.Edition));
            var question = PresenceQuestion.Of(
                data, parsed.GetRequiredValue(taxon), parsed.GetValue(CommonOptions.Grid), parsed.GetValue(periods), parsed.GetValue(CommonOptions.Quality), parsed.GetValue(CommonOptions.Region),
                parsed.GetValue(CommonOptions.Bbox));
            var map = AnswerPresence.Answer(data, question);
            if (ExportFormats.Find(parsed.GetRequiredValue(format)) is { } kind and (ExportFormat.GeoPackage or ExportFormat.Parquet))
            {
                var target = parsed.GetValue(CommonOptions.Output) ?? throw new UserException("This format is written to files only.", "--output", "Name a file with -o FILE.") { IsArgument = true };
                await NewFile.WriteAsync(target, file => MakePresence.WriteAsync(folder, data, question, kind, file, cancel));
                Explain(context.Error, map);
                return;
            }

            await context.DeliverAsync(parsed.GetValue(CommonOptions.Output), to => parsed.GetRequiredValue(format) == "geojson"
                ? PresenceGeoJson.WriteAsync(to, map, Caption.Of(data, question), cancel)
                : PresenceCsv.WriteAsync(to, map, cancel));
            Explain(context.Error, map);
        });
        return command;
    }

    private static void Explain(TextWriter to, Presence.PresenceMap map)
    {
        var omitted = map.Omitted;
        if (omitted != default)
            to.WriteLine(FormattableString.Invariant($"Not on the map: {omitted.TooCoarse} records too coarse for these squares, {omitted.BetweenPeriods} between the periods, {omitted.BelowQuality} below the quality asked."));
    }
}
