using System.CommandLine;
using System.Globalization;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary><c>rangemap import</c>: takes records in from files.</summary>
internal static class ImportCommand
{
    public static Command Make(CommandContext context)
    {
        var files = new Argument<string[]>("file") { Description = "CSV files with a header.", Arity = ArgumentArity.OneOrMore };
        var dataset = new Option<string>("--dataset") { Description = "Identifier of the data set that the records belong to.", HelpName = "ID", Required = true };
        var mapping = new Option<string?>("--mapping") { Description = "JSON file that says which column means what.", HelpName = "FILE" };
        var order = new Option<string?>("--date-order") { Description = "Order of dates such as 3/6/1998.", HelpName = "dmy|mdy" };
        order.AcceptOnlyFromAmong("dmy", "mdy");
        var dryRun = new Option<bool>("--dry-run") { Description = "Tell what the import would do, and keep nothing." };
        var newTaxa = new Option<bool>("--new-taxa") { Description = "Add names that the taxon list lacks, instead of refusing their rows." };
        var refusals = new Option<string?>("--refusals") { Description = "Write the refused rows to a CSV file that can be mended and imported again.", HelpName = "FILE" };
        var command = new Command("import", "Import records from files.") { files, dataset, mapping, order, dryRun, newTaxa, refusals, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(async (parsed, cancel) =>
        {
            Check(parsed.GetRequiredValue(dataset), [.. parsed.GetRequiredValue(files).Select(Ask.File)], parsed.GetValue(refusals));
            var folder = DataFolder.Open(parsed.GetRequiredValue(CommonOptions.Data));
            var refused = false;
            foreach (var file in parsed.GetRequiredValue(files))
            {
                var request = new ImportRequest(file, parsed.GetRequiredValue(dataset))
                {
                    Mapping = parsed.GetValue(mapping) is { } mappingFile ? ReadMapping(mappingFile) : null,
                    DateOrder = parsed.GetValue(order) switch { "dmy" => DateOrder.DayFirst, "mdy" => DateOrder.MonthFirst, _ => DateOrder.NotStated },
                    NewTaxa = parsed.GetValue(newTaxa),
                    DryRun = parsed.GetValue(dryRun),
                };
                var answer = await RunAsync(folder, request, context, parsed.GetValue(CommonOptions.Json), cancel);
                refused |= answer.Figures.Refused > 0;
                if (parsed.GetValue(refusals) is { } target && !request.DryRun)
                    RefusalsCommand.Write(folder, answer.Figures.Batch, target);
            }

            return refused ? ExitCode.DoneWithRefusals : ExitCode.Done;
        });
        return command;
    }

    private static void Check(string dataset, string[] files, string? refusals)
    {
        if (string.IsNullOrWhiteSpace(dataset))
            throw new UserException("The data set has no name.", "--dataset", "Name the data set that the records belong to.") { IsArgument = true };
        if (refusals is null)
            return;
        if (files.Length > 1)
            throw new UserException("The refused rows of several files do not fit in one.", "--refusals", "Import the files one by one, or write them with rangemap refusals BATCH.") { IsArgument = true };
        if (Path.GetFullPath(refusals) == Path.GetFullPath(files[0]))
            throw new UserException("The refused rows would be written over the file that is imported.", "--refusals", "Name another file.") { IsArgument = true };
    }

    /// <summary>Imports one file and says what became of it.</summary>
    public static async Task<ImportAnswer> RunAsync(DataFolder folder, ImportRequest request, CommandContext context, bool json, CancellationToken cancel)
    {
        ImportAnswer answer;
        using (var progress = new ProgressLine(context.Error, $"Reading {Path.GetFileName(request.Path)}", "rows"))
            answer = await ImportFile.RunAsync(folder, request, context.Clock, progress, cancel);
        if (json)
            context.WriteJson(Machine(answer));
        else
            Write(context.Out, answer);
        return answer;
    }

    private static MappingFile ReadMapping(string path)
    {
        using var stream = File.OpenRead(path);
        try
        {
            return MappingFile.Read(stream);
        }
        catch (ImportProblemException stopped)
        {
            throw new UserException(stopped.Problem.What, path, stopped.Problem.Mend);
        }
    }

    private static object Machine(ImportAnswer answer) => new
    {
        answer.Figures.Batch,
        answer.Request.Dataset,
        answer.Figures.Read,
        answer.Figures.Accepted,
        answer.Figures.Refused,
        answer.Figures.Updated,
        answer.Figures.Unchanged,
        Seconds = Math.Round(answer.Took.TotalSeconds, 3),
        answer.Figures.Doubts,
        answer.Mapping,
        answer.Request.DryRun,
    };

    /// <summary>Says what became of a file.</summary>
    public static void Write(TextWriter to, ImportAnswer answer)
    {
        var (figures, culture) = (answer.Figures, CultureInfo.InvariantCulture);
        to.WriteLine(answer.Request.DryRun ? $"{answer.Request.Path} (dry run: nothing was kept)" : answer.Request.Path);
        foreach (var (column, use) in answer.Mapping)
            to.WriteLine($"  column {column}: {use}");
        to.WriteLine(string.Create(culture, $"  {figures.Read:N0} rows read in {answer.Took.TotalSeconds:0.0} s: {figures.Accepted:N0} new, {figures.Updated:N0} changed, {figures.Unchanged:N0} known already, {figures.Refused:N0} refused"));
        foreach (var (doubt, count) in figures.Doubts)
            to.WriteLine(string.Create(culture, $"  doubt {doubt}: {count:N0} records"));
        if (figures.Refused > 0 && !answer.Request.DryRun)
            to.WriteLine(string.Create(culture, $"  rangemap refusals {figures.Batch} writes the refused rows with their reasons."));
    }
}
