using System.CommandLine;
using System.Globalization;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary><c>rangemap export</c>: writes the cube, the effort or single records to a file.</summary>
internal static class ExportCommand
{
    private static readonly Option<string> Format = new("--format") { Description = "csv, geojson, gpkg, parquet or, for records, dwca.", HelpName = "FORMAT", DefaultValueFactory = _ => "csv" };
    private static readonly Option<string> What = new("--what") { Description = "cube (taxon by square by year), effort (square by year) or records; dwca always holds records.", HelpName = "WHAT", DefaultValueFactory = _ => "cube" };
    private static readonly Option<string?> From = new("--from") { Description = "First year or day.", HelpName = "DATE" };
    private static readonly Option<string?> To = new("--to") { Description = "Last year or day.", HelpName = "DATE" };
    private static readonly Option<bool> InFull = new("--in-full") { Description = "Records with those of sensitive species, people and sites: not for publication." };
    private static readonly Option<string> Output = new("--output", "-o") { Description = "File to write.", HelpName = "FILE", Required = true };

    /// <summary>Taxa, for exports and tiles.</summary>
    public static Option<string?> Taxon { get; } = new("--taxon") { Description = "Identifiers or scientific names with commas between; all where none is named.", HelpName = "TAXA" };

    /// <summary>Group, for exports and tiles.</summary>
    public static Option<string?> Group { get; } = new("--group") { Description = "Group of taxa.", HelpName = "GROUP" };

    /// <summary>Frozen edition.</summary>
    public static Option<string?> Edition { get; } = new("--edition") { Description = "Frozen edition; the live state where none is named.", HelpName = "ID" };

    public static Command Make(CommandContext context)
    {
        var command = new Command("export", "Write the occurrence cube, recording effort or records to a file.")
        {
            Format, What, Taxon, Group, CommonOptions.Grid, From, To, CommonOptions.Quality, CommonOptions.Region, CommonOptions.Bbox, Edition, InFull, Output, CommonOptions.Data, CommonOptions.Json,
        };
        Format.AcceptOnlyFromAmong("csv", "geojson", "gpkg", "parquet", "dwca");
        What.AcceptOnlyFromAmong("cube", "effort", "records");
        command.SetAction((parsed, cancel) => RunAsync(context, parsed, cancel));
        return command;
    }

    private static async Task<int> RunAsync(CommandContext context, ParseResult parsed, CancellationToken cancel)
    {
        var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
        var data = CurrentData.Of(folder, context.Clock).At(parsed.GetValue(Edition));
        var word = parsed.GetRequiredValue(Format);
        var table = word == ExportFormat.DarwinCoreArchive.Word() ? ExportTables.Records : parsed.GetRequiredValue(What) switch { "effort" => ExportTables.Effort, "records" => ExportTables.Records, _ => ExportTables.Presence };
        var (question, format) = (ExportAsk.Read(data, table, Parts(parsed), parsed.GetValue(InFull)), ExportAsk.Format(word, table));
        var size = await EstimateSize.OfAsync(folder, question, format, cancel);
        var (target, json) = (parsed.GetRequiredValue(Output), parsed.GetValue(CommonOptions.Json));
        if (!json)
            context.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{size.Rows:N0} rows{(size.AtMost ? " at most" : "")}, about {size.Bytes / 1e6:N1} MB"));
        using (var progress = new ProgressLine(context.Error, $"Writing {Path.GetFileName(target)}", "rows"))
            await NewFile.WriteAsync(target, file => MakeExport.WriteAsync(folder, question, format, file, rows => progress.Report(ImportProgress.Of(rows, size.Rows == 0 ? 0 : Math.Min(1, (double)rows / size.Rows), TimeSpan.Zero)), cancel));
        if (format == ExportFormat.Csv)
            await NewFile.WriteAsync(target + "-metadata.json", async file => await WriteDescriptionAsync(folder, question, file, Path.GetFileName(target), cancel));
        if (json)
            context.WriteJson(new { File = target, Table = table.Name, Format = word, size.Rows, size.AtMost, Bytes = new FileInfo(target).Length, Edition = data.StateName, Frozen = data.FrozenId is not null });
        return ExitCode.Done;
    }

    private static ExportParts Parts(ParseResult parsed) => new()
    {
        Taxon = parsed.GetValue(Taxon),
        Group = parsed.GetValue(Group),
        Grid = parsed.GetValue(CommonOptions.Grid),
        From = parsed.GetValue(From),
        To = parsed.GetValue(To),
        Quality = parsed.GetValue(CommonOptions.Quality),
        Region = parsed.GetValue(CommonOptions.Region),
        Bbox = parsed.GetValue(CommonOptions.Bbox),
    };

    private static async Task WriteDescriptionAsync(DataFolder folder, ExportQuestion question, string path, string csvName, CancellationToken cancel)
    {
        await using var file = File.Create(path);
        await CsvwMetadata.WriteAsync(file, question.Table, MakeExport.SourceOf(folder, question), csvName, cancel);
    }
}

/// <summary>Writes a file beside its place and puts it there when it is whole, so that a stopped command leaves no half of one.</summary>
internal static class NewFile
{
    public static async Task WriteAsync(string path, Func<string, Task> write)
    {
        var unfinished = path + ".part";
        File.Delete(unfinished);
        try
        {
            await write(unfinished);
            File.Move(unfinished, path, overwrite: true);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }
}
