using System.CommandLine;

namespace RangeMap.Server;

/// <summary><c>rangemap sheet</c>: a recorder's records with what is asked about them and what was decided.</summary>
internal static class SheetCommand
{
    public static Command Make(CommandContext context)
    {
        var recorder = new Argument<string>("recorder") { Description = "The recorder's name as records have it." };
        var output = new Option<string>("--output", "-o") { Description = "File to write, ending in .html or .csv.", HelpName = "FILE", Required = true };
        var command = new Command("sheet", "Write a sheet for a recorder: records, what we ask about them, what was decided and why.") { recorder, output, CommonOptions.Data };
        command.SetAction(async (parsed, _) =>
        {
            var file = parsed.GetRequiredValue(output);
            var write = WriterOf(file);
            var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
            var sheet = new RecorderSheet(folder, new CurrentData(folder.Database, context.Clock).Now(), parsed.GetRequiredValue(recorder)).Checked();
            await using var to = File.Create(file);
            await write(to, sheet);
            return ExitCode.Done;
        });
        return command;
    }

    private static Func<Stream, RecorderSheet, Task> WriterOf(string file) => Path.GetExtension(file).ToUpperInvariant() switch
    {
        ".HTML" or ".HTM" => RecorderSheetHtml.WriteAsync,
        ".CSV" => RecorderSheetCsv.WriteAsync,
        _ => throw new UserException("The kind of sheet cannot be told from the name of the file.", "--output", "Let the name end in .html or .csv.") { IsArgument = true },
    };
}
