using System.CommandLine;
using System.Globalization;
using System.Runtime;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap import</c>: takes records in from files.</summary>
internal static class ImportCommand
{
    private const int MostNamesShown = 10;

    public static Command Make(CommandContext context)
    {
        var files = new Argument<string[]>("file") { Description = "Tables with a header (CSV, tab or semicolon, also gzipped), .xlsx workbooks, Darwin Core Archives (zip or folder).", Arity = ArgumentArity.OneOrMore };
        var dataset = new Option<string>("--dataset") { Description = "Identifier of the data set that the records belong to.", HelpName = "ID", Required = true };
        var mapping = new Option<string?>("--mapping") { Description = "JSON file that says which column means what.", HelpName = "FILE" };
        var order = new Option<string?>("--date-order") { Description = "Order of dates such as 3/6/1998.", HelpName = "dmy|mdy" };
        order.AcceptOnlyFromAmong("dmy", "mdy");
        var sheet = new Option<string?>("--sheet") { Description = "Sheet of a workbook; the first visible one with a header where none is named.", HelpName = "NAME" };
        var dryRun = new Option<bool>("--dry-run") { Description = "Tell what the import would do, and keep nothing." };
        var newTaxa = new Option<bool>("--new-taxa") { Description = "Add names that the taxon list lacks, instead of refusing their rows." };
        var refusals = new Option<string?>("--refusals") { Description = "Write the refused rows to a CSV file that can be mended and imported again.", HelpName = "FILE" };
        var command = new Command("import", "Import records from files.") { files, dataset, mapping, order, sheet, dryRun, newTaxa, refusals, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(async (parsed, cancel) =>
        {
            Check(parsed.GetRequiredValue(dataset), [.. parsed.GetRequiredValue(files).Select(Ask.FileOrFolder)], parsed.GetValue(refusals));
            var folder = DataFolder.Open(parsed.GetRequiredValue(CommonOptions.Data));
            var refused = false;
            foreach (var file in parsed.GetRequiredValue(files))
            {
                var stated = new ImportStatements
                {
                    Mapping = parsed.GetValue(mapping) is { } mappingFile ? ReadMapping(mappingFile) : null,
                    DateOrder = parsed.GetValue(order) switch { "dmy" => DateOrder.DayFirst, "mdy" => DateOrder.MonthFirst, _ => DateOrder.NotStated },
                    Sheet = parsed.GetValue(sheet),
                    NewTaxa = parsed.GetValue(newTaxa),
                    DryRun = parsed.GetValue(dryRun),
                };
                var request = new ImportRequest(file, parsed.GetRequiredValue(dataset)) { Stated = stated };
                var answer = await RunAsync(folder, request, context, parsed.GetValue(CommonOptions.Json), cancel);
                refused |= answer.Figures.Refused > 0;
                if (!stated.DryRun)
                    ImportAftercare.Run(folder.Database);
                if (parsed.GetValue(refusals) is { } target && !stated.DryRun)
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
        // Nobody waits for an answer meanwhile: no collection need run beside the work and cost a second look at memory.
        GCSettings.LatencyMode = GCLatencyMode.Batch;
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

    private static string TitleOf(string code) => DoubtCatalogue.Find(code) is { } doubt ? DoubtCatalogue.Of(doubt).Title : code;

    private static void WriteUnknown(TextWriter to, UnknownNames names)
    {
        foreach (var name in names.All.Take(MostNamesShown))
        {
            var near = name.Suggestions.Count == 0 ? "" : $" (perhaps {string.Join(", or ", name.Suggestions.Select(suggestion => suggestion.Name))})";
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  unknown name \"{name.Name}\": {name.Rows:N0} {(name.Rows == 1 ? "row" : "rows")}{near}"));
        }

        if (names.All.Count > MostNamesShown)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  and {names.All.Count - MostNamesShown:N0} other unknown names"));
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
        answer.Request.Stated.DryRun,
        Form = answer.File.Words,
        answer.File.Citation,
        answer.Notes,
        answer.Kept,
        answer.KeptAs,
        UnknownNames = answer.UnknownNames.All.Select(name => new { name.Name, name.Rows, Suggestions = name.Suggestions.Select(suggestion => suggestion.Name) }),
    };

    /// <summary>Says what became of a file.</summary>
    public static void Write(TextWriter to, ImportAnswer answer)
    {
        var (figures, culture) = (answer.Figures, CultureInfo.InvariantCulture);
        to.WriteLine(answer.Request.Stated.DryRun ? $"{answer.Request.Path} (dry run: nothing was kept)" : answer.Request.Path);
        to.WriteLine($"  read as {answer.File.Words}");
        foreach (var (column, use) in answer.Mapping)
            to.WriteLine($"  column {column}: {use}");
        to.WriteLine(string.Create(culture, $"  {figures.Read:N0} rows read in {answer.Took.TotalSeconds:0.0} s: {figures.Accepted:N0} new, {figures.Updated:N0} changed, {figures.Unchanged:N0} known already, {figures.Refused:N0} refused"));
        foreach (var (code, count) in figures.Doubts)
            to.WriteLine(string.Create(culture, $"  doubt: {TitleOf(code)}: {count:N0} records"));
        foreach (var (term, cells) in answer.NotUnderstood)
            to.WriteLine(string.Create(culture, $"  {TermNames.Name(term)}: {cells:N0} cells were not understood and are kept as written"));
        if (answer.KeptAs is { } keptAs)
            to.WriteLine($"  the archive is kept whole in the data folder as {keptAs}");
        foreach (var note in answer.Notes)
            to.WriteLine($"  {note}");
        WriteUnknown(to, answer.UnknownNames);
        if (figures.Refused > 0 && !answer.Request.Stated.DryRun)
            to.WriteLine(string.Create(culture, $"  rangemap refusals {figures.Batch} writes the refused rows with their reasons."));
    }
}
