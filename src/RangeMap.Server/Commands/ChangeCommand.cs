using System.CommandLine;

namespace RangeMap.Server;

/// <summary><c>rangemap change</c>: how a taxon's range changed between two periods, or those of all taxa.</summary>
internal static class ChangeCommand
{
    private const int LabelWidth = 40;

    public static Command Make(CommandContext context)
    {
        var taxon = new Argument<string?>("taxon") { Description = "Identifier or scientific name.", Arity = ArgumentArity.ZeroOrOne };
        var all = new Option<bool>("--all") { Description = "Measure every taxon, as a table." };
        var from = new Option<string?>("--from") { Description = "The earlier period, an ISO 8601 interval such as 1990/1999.", HelpName = "PERIOD" };
        var to = new Option<string?>("--to") { Description = "The later period, such as 2010/2019.", HelpName = "PERIOD" };
        var command = new Command("change", "Measure how a range changed between two periods, with intervals, or say why it cannot be told.")
        {
            taxon, all, from, to, CommonOptions.Grid, CommonOptions.Quality, CommonOptions.Output, CommonOptions.Data, CommonOptions.Json,
        };
        command.SetAction(parsed =>
        {
            var name = parsed.GetValue(taxon);
            if (name is null != parsed.GetValue(all))
                throw new UserException("Either one taxon or --all is needed.", "taxon", "Name a taxon, or give --all for every one.") { IsArgument = true };
            var question = ChangeQuestion.Of(parsed.GetValue(CommonOptions.Grid), parsed.GetValue(from), parsed.GetValue(to), parsed.GetValue(CommonOptions.Quality));
            var data = new CurrentData(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)).Database, context.Clock).Now();
            var changes = name is null ? MeasureChange.OfAll(data, question) : [MeasureChange.Of(data, data.Find(name), question)];
            var report = ChangeJson.Of(data, question, changes);
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(report);
            else if (name is null || parsed.GetValue(CommonOptions.Output) is not null)
                WriteTable(context, report, parsed.GetValue(CommonOptions.Output));
            else
                Write(context.Out, report);
        });
        return command;
    }

    private static void WriteTable(CommandContext context, ChangeJson report, string? file)
    {
        if (file is null)
        {
            ChangeTable.Write(context.Out, report);
            return;
        }

        using var to = new StreamWriter(file);
        ChangeTable.Write(to, report);
    }

    private static void Write(TextWriter to, ChangeJson report)
    {
        foreach (var group in report.Effort)
        {
            foreach (var period in group.Periods)
            {
                to.WriteLine(FormattableString.Invariant(
                    $"{period.Period}: {period.Visits:N0} visits by {period.Recorders:N0} recorders to {period.Squares:N0} squares ({period.WellSurveyed:N0} well surveyed), {period.MeanListLength:0.0} taxa a visit"));
            }
        }

        foreach (var verdict in report.Verdicts)
        {
            to.WriteLine(verdict.Words);
            to.WriteLine(FormattableString.Invariant(
                $"Squares: {verdict.Gained} gained, {verdict.Lost} lost, {verdict.Kept} kept; {verdict.NotSurveyedBefore} not surveyed before, {verdict.NotSurveyedAfter} not surveyed again."));
        }

        to.WriteLine();
        to.WriteLine($"{"measure",-LabelWidth}{"change",12}  {"95 % interval",-22}{"n",8}");
        foreach (var estimate in report.Taxa)
        {
            to.WriteLine(estimate.Refused is null
                ? FormattableString.Invariant($"{estimate.Label,-LabelWidth}{estimate.Value,12:+0.0;-0.0;0.0}  {$"{estimate.Low:0.0} to {estimate.High:0.0} {estimate.Unit}",-22}{estimate.N,8}")
                : FormattableString.Invariant($"{estimate.Label,-LabelWidth}{"-",12}  {"-",-22}{estimate.N,8}  {estimate.Refused}"));
        }
    }
}
