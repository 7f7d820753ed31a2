using System.CommandLine;
using System.Globalization;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary><c>rangemap tiles</c>: writes vector tiles of a taxon, or of the whole scheme, to one PMTiles archive.</summary>
internal static class TilesCommand
{
    public static Command Make(CommandContext context)
    {
        var taxon = new Argument<string?>("taxon") { Description = "Identifier or scientific name; several with commas between.", Arity = ArgumentArity.ZeroOrOne };
        var all = new Option<bool>("--all") { Description = "The whole scheme: a layer for each taxon." };
        var periods = new Option<string?>("--periods") { Description = "ISO 8601 intervals with commas between them.", HelpName = "LIST" };
        var output = new Option<string>("--output", "-o") { Description = "File to write, such as map.pmtiles.", HelpName = "FILE", Required = true };
        var command = new Command("tiles", "Write vector tiles to one file that any static web host can serve.")
        {
            taxon, all, ExportCommand.Group, CommonOptions.Grid, periods, CommonOptions.Quality, ExportCommand.Edition, output, CommonOptions.Data, CommonOptions.Json,
        };
        command.SetAction(async (parsed, cancel) =>
        {
            if (parsed.GetValue(taxon) is null == !parsed.GetValue(all))
                throw new UserException("Name a taxon, or say --all.", "taxon", "rangemap tiles TAXON -o FILE.pmtiles, or rangemap tiles --all -o FILE.pmtiles.") { IsArgument = true };
            var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
            var data = new CurrentData(folder.Database, context.Clock, new(folder.Path)).At(parsed.GetValue(ExportCommand.Edition));
            var parts = new ExportParts { Taxon = parsed.GetValue(taxon), Group = parsed.GetValue(ExportCommand.Group), Grid = parsed.GetValue(CommonOptions.Grid), Quality = parsed.GetValue(CommonOptions.Quality) };
            var question = ExportAsk.Read(data, ExportTables.Presence, parts);
            await WriteAsync(context, folder, question, Ask.Periods(parsed.GetValue(periods)), parsed.GetRequiredValue(output), parsed.GetValue(CommonOptions.Json), cancel);
        });
        return command;
    }

    private static async Task WriteAsync(CommandContext context, DataFolder folder, ExportQuestion question, IReadOnlyList<Presence.Period> periods, string target, bool json, CancellationToken cancel)
    {
        long tiles = 0;
        using (var progress = new ProgressLine(context.Error, $"Drawing {Path.GetFileName(target)}", "taxa"))
        {
            void Tell(long done, long of) => progress.Report(ImportProgress.Of(done, (double)done / of, TimeSpan.Zero));
            await NewFile.WriteAsync(target, async file => tiles = await MakeTiles.WriteAsync(folder, question, periods, file, Tell, cancel));
        }

        var bytes = new FileInfo(target).Length;
        if (json)
            context.WriteJson(new { File = target, Taxa = question.Taxa.Count, Tiles = tiles, Bytes = bytes, Edition = question.Data.StateName, Frozen = question.Data.FrozenId is not null });
        else
            context.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{tiles:N0} tiles, {bytes / 1e6:N1} MB"));
    }
}
