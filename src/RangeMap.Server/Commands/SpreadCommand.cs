using System.CommandLine;
using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary><c>rangemap spread</c>: how fast a taxon spread, by several methods; or the same for a plain table.</summary>
internal static class SpreadCommand
{
    public static Command Make(CommandContext context)
    {
        var taxon = new Argument<string?>("taxon") { Description = "Identifier or scientific name.", Arity = ArgumentArity.ZeroOrOne };
        var origin = new Option<string?>("--origin") { Description = "Grid reference of where the spread began; the earliest squares tell where none is named.", HelpName = "REF" };
        var table = new Option<string?>("--table") { Description = "CSV with the columns year,x,y or year,distance; needs no data folder. - reads standard input.", HelpName = "FILE" };
        var units = new Option<string>("--units") { Description = "Unit of x, y and distance in the table.", HelpName = "m|km", DefaultValueFactory = _ => "m" };
        units.AcceptOnlyFromAmong("m", "km");
        var timeUnit = new Option<string>("--time-unit") { Description = "What one step of the table's year column is, such as year or month.", HelpName = "NAME", DefaultValueFactory = _ => "year" };
        var model = new Option<bool>("--model") { Description = "List the speed of the arrival model too; its fit takes some seconds." };
        var command = new Command("spread", "Measure how fast a taxon spread, with intervals, or say why it cannot be told.")
        {
            taxon, CommonOptions.Grid, origin, model, table, units, timeUnit, CommonOptions.Data, CommonOptions.Json,
        };
        command.SetAction(parsed =>
        {
            var report = parsed.GetValue(table) is { } file
                ? OfTable(context, file, parsed.GetRequiredValue(units), parsed.GetRequiredValue(timeUnit), Ask.Size(parsed.GetValue(CommonOptions.Grid)))
                : OfTaxon(context, parsed.GetRequiredValue(CommonOptions.Data), parsed.GetValue(taxon), parsed.GetValue(CommonOptions.Grid), parsed.GetValue(origin), parsed.GetValue(model));
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(report);
            else
                Write(context.Out, report);
        });
        return command;
    }

    private static SpreadJson OfTaxon(CommandContext context, string folder, string? taxon, string? grid, string? origin, bool model)
    {
        if (taxon is null)
            throw new UserException("No taxon was named.", "taxon", "Give an identifier or scientific name, or a table with --table FILE.") { IsArgument = true };
        var data = new CurrentData(DataFolder.OpenExisting(folder).Database, context.Clock).Now();
        return SpreadJson.Of(MeasureSpread.Answer(data, data.Find(taxon), Ask.Size(grid), origin is null ? null : Ask.Square(origin), model));
    }

    private static SpreadJson OfTable(CommandContext context, string file, string units, string timeUnit, SquareSize size)
    {
        using var opened = file == "-" ? null : new StreamReader(file);
        var report = SpreadTable.Measure(opened ?? context.In, file, units == "km" ? 1 : 0.001, timeUnit, size);
        return SpreadJson.Of(Path.GetFileName(file), "", timeUnit, report, null);
    }

    private static void Write(TextWriter to, SpreadJson report)
    {
        to.WriteLine(report.Summary);
        if (report.Origin is { } origin)
            to.WriteLine(FormattableString.Invariant($"Distances from {origin.Square ?? "easting " + origin.Easting.ToString(CultureInfo.InvariantCulture) + " m, northing " + origin.Northing.ToString(CultureInfo.InvariantCulture) + " m"} ({origin.How})."));
        to.WriteLine();
        to.WriteLine($"{"method",-18}{"km per " + report.Unit,14}{"95 % interval",20}{"n",8}");
        foreach (var estimate in report.Estimators)
        {
            to.WriteLine(estimate.Refused is null
                ? FormattableString.Invariant($"{estimate.Method,-18}{estimate.KmPerYear,14:0.00}{Interval(estimate.Low, estimate.High),20}{estimate.N,8}  {estimate.Label}")
                : FormattableString.Invariant($"{estimate.Method,-18}{"-",14}{"-",20}{estimate.N,8}  {estimate.Label}: {estimate.Refused}"));
            if (estimate.Note is not null)
                to.WriteLine($"{"",-18}{estimate.Note}");
        }

        WriteJumps(to, report);
        if (report.Sectors.Count == 0)
            return;
        to.WriteLine();
        to.WriteLine($"{"bearing",-16}{"km per " + report.Unit,14}{"95 % interval",20}{"n",8}");
        foreach (var sector in report.Sectors)
        {
            to.WriteLine(sector.Refused is null
                ? FormattableString.Invariant($"{sector.Bearing,5:0} degrees   {sector.KmPerYear,14:0.00}{Interval(sector.Low, sector.High),20}{sector.N,8}")
                : FormattableString.Invariant($"{sector.Bearing,5:0} degrees   {"-",14}{"-",20}{sector.N,8}  {sector.Refused}"));
        }
    }

    private static void WriteJumps(TextWriter to, SpreadJson report)
    {
        if (report.Jumps.Count == 0)
            return;
        to.WriteLine();
        to.WriteLine($"{"far ahead",-16}{report.Unit,14}{"km ahead",20}{"squares",8}");
        foreach (var jump in report.Jumps)
            to.WriteLine(FormattableString.Invariant($"{jump.Square ?? FormattableString.Invariant($"{jump.Easting:0} {jump.Northing:0}"),-16}{jump.Year,14:0.##}{jump.KmAhead,20:0}{jump.Squares,8}"));
    }

    private static string Interval(double? low, double? high) => FormattableString.Invariant($"{low:0.00} to {high:0.00}");
}
