using System.CommandLine;
using RangeMap.Change;

namespace RangeMap.Server;

/// <summary><c>rangemap demo</c>: makes the invented scenario where it is absent, then serves it.</summary>
internal static class DemoCommand
{
    public static Command Make(CommandContext context)
    {
        var data = new Option<string>("--data")
        {
            Description = "Folder of the demo.",
            HelpName = "DIR",
            DefaultValueFactory = _ => DataFolder.DefaultDemoPath,
        };
        var rows = new Option<long>("--rows") { Description = "Number of records.", HelpName = "N", DefaultValueFactory = _ => new SimulatedOptions().Rows };
        var command = new Command("demo", "Make an invented recording scheme, import it, measure it and serve it.") { data, rows, ServeCommand.Urls };
        command.SetAction(async (parsed, cancel) =>
        {
            var folder = DataFolder.Open(parsed.GetRequiredValue(data));
            if (!MakeDemo.IsMade(folder))
                await MakeAsync(folder, new() { Rows = parsed.GetRequiredValue(rows) }, context, cancel);
            context.Out.WriteLine(WriteSimulation.Notice);
            await ServeCommand.ServeAsync(folder, parsed.GetRequiredValue(ServeCommand.Urls), context, cancel);
            return ExitCode.Done;
        });
        return command;
    }

    private static async Task MakeAsync(DataFolder folder, SimulatedOptions options, CommandContext context, CancellationToken cancel)
    {
        context.Out.WriteLine("Making the demo: inventing a recording scheme and importing its records. This happens once.");
        using (var progress = new ProgressLine(context.Error, "Making the demo", "records"))
        {
            var answer = await MakeDemo.RunAsync(folder, options, context.Clock, progress, cancel);
            ImportCommand.Write(context.Out, answer);
        }

        var current = new CurrentData(folder.Database, context.Clock).Now();
        var arriving = InventedScenario.Species.First(species => species.Role == InventedRole.Arriving);
        var spread = MeasureSpread.Answer(current, current.Find(InventedTaxonList.IdOf(arriving.Name)), Grids.SquareSize.Km10, null);
        context.Out.WriteLine($"{arriving.Name}, {arriving.Vernacular} (invented): {spread.Report.Summary}");
    }
}
