using System.CommandLine;
using System.Globalization;
using RangeMap.Change;

namespace RangeMap.Server;

/// <summary><c>rangemap simulate</c>: writes an invented world whose truth is known.</summary>
internal static class SimulateCommand
{
    public static Command Make(CommandContext context)
    {
        var defaults = new SimulatedOptions();
        var rows = new Option<long>("--rows") { Description = "Number of records.", HelpName = "N", DefaultValueFactory = _ => defaults.Rows };
        var seed = new Option<ulong>("--seed") { Description = "The same seed gives the same world.", HelpName = "N", DefaultValueFactory = _ => defaults.Seed };
        var speed = new Option<double>("--speed") { Description = "True speed of the arriving species, km a year.", HelpName = "KM", DefaultValueFactory = _ => defaults.ArrivingSpeed };
        var folder = new Option<string>("--output", "-o") { Description = "Folder for taxa.csv, records.csv and truth.csv.", HelpName = "DIR", Required = true };
        var command = new Command("simulate", "Write an invented world: a taxon list, records, and the truth beside them.") { rows, seed, speed, folder };
        command.SetAction((parsed, cancel) =>
        {
            var options = defaults with { Rows = parsed.GetRequiredValue(rows), Seed = parsed.GetRequiredValue(seed), ArrivingSpeed = parsed.GetRequiredValue(speed) };
            SimulationFiles files;
            try
            {
                using var progress = new ProgressLine(context.Error, "Inventing", "records");
                files = WriteSimulation.Run(parsed.GetRequiredValue(folder), options, progress, cancel);
            }
            catch (ArgumentOutOfRangeException error)
            {
                throw new UserException(string.Create(CultureInfo.InvariantCulture, $"{error.ActualValue} is out of range."), error.ParamName ?? "simulate", "Rows must not be negative, speeds must be above 0.");
            }

            context.Out.WriteLine(WriteSimulation.Notice);
            context.Out.WriteLine($"  {files.Taxa}\n  {files.Records}\n  {files.Truth}");
            return Task.FromResult(ExitCode.Done);
        });
        return command;
    }
}
