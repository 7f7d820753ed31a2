using System.CommandLine;
using System.Data.Common;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>The command line: a table of its commands, and one place where failures become messages and exit codes.</summary>
public static class CommandLine
{
    private static readonly Lock Parsing = new();

    /// <summary>Runs a command.</summary>
    /// <returns>0 done, 1 failed, 2 bad arguments, 3 done with refusals.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> arguments, CommandContext context, CancellationToken cancel = default)
    {
        ParseResult parsed;
        // Commands share the options that are common to them, which are no place for two command lines at once, as in tests.
        lock (Parsing)
            parsed = Root(context).Parse(arguments);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
                Complain(context, arguments, error.Message, "command line", "rangemap --help lists the commands; rangemap COMMAND --help its options.");
            return ExitCode.BadArguments;
        }

        var configuration = new InvocationConfiguration { Output = context.Out, Error = context.Error, EnableDefaultExceptionHandler = false };
        try
        {
            return await parsed.InvokeAsync(configuration, cancel);
        }
        catch (UserException problem)
        {
            Complain(context, arguments, problem.Message, problem.Where, problem.Mend);
            return problem.IsArgument ? ExitCode.BadArguments : ExitCode.Failed;
        }
        catch (EditionPassedException passed)
        {
            return Complain(context, arguments, passed.Message, "data folder", "Run the command again.");
        }
        catch (OperationCanceledException)
        {
            return Complain(context, arguments, "The command was stopped.", "command", "Nothing half-done was kept; run it again when you like.");
        }
        catch (StoreException problem)
        {
            return Complain(context, arguments, problem.Message, "data folder", problem.Mend);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Complain(context, arguments, error.Message, "file", "Check the path and that you may read or write there.");
        }
        catch (Exception error) when (error is DbException or InvalidDataException)
        {
            return Complain(context, arguments, $"The data folder cannot be read or written: {error.Message}", "data folder", "Is the disk full, or the folder in use or damaged? Nothing half-done was kept.");
        }
    }

    private static RootCommand Root(CommandContext context) => new("RangeMap: from species records to grid squares, presence maps, and the front of an arriving species.")
    {
        DemoCommand.Make(context),
        ServeCommand.Make(context),
        TaxaCommand.Make(context),
        TaxonCommand.Make(context),
        RegionsCommand.Make(context),
        ImportCommand.Make(context),
        UndoCommand.Make(context),
        NamesCommand.Make(context),
        RecordsCommand.Make(context),
        ReviewCommand.Make(context),
        SheetCommand.Make(context),
        TokenCommand.Make(context),
        RefusalsCommand.Make(context),
        PresenceCommand.Make(context),
        ExportCommand.Make(context),
        TilesCommand.Make(context),
        EditionCommand.Make(context),
        PeriodsCommand.Make(context),
        MapCommand.Make(context),
        SpreadCommand.Make(context),
        ChangeCommand.Make(context),
        ForecastCommand.Make(context),
        FrontsCommand.Make(context),
        GridCommand.Make(context),
        SimulateCommand.Make(context),
        VerifyCommand.Make(context),
    };

    private static int Complain(CommandContext context, IEnumerable<string> arguments, string what, string where, string mend)
    {
        if (arguments.Contains("--json"))
            context.WriteJson(new { Error = new { what, where, mend } });
        else
            context.Error.WriteLine($"rangemap: {what} ({where})\n  {mend}");
        return ExitCode.Failed;
    }
}
