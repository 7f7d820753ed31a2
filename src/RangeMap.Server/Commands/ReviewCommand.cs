using System.CommandLine;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap review</c>: decides on records, and takes decisions back.</summary>
internal static class ReviewCommand
{
    private static readonly Option<string> By = new("--by") { Description = "Who decides; stands in the history.", HelpName = "NAME", Required = true };
    private static readonly Option<string> Reason = new("--reason") { Description = "Why, for the recorder to read.", HelpName = "TEXT", DefaultValueFactory = _ => "" };

    public static Command Make(CommandContext context)
    {
        var records = new Argument<string[]>("record") { Description = "Names of records, as rangemap records tells them.", Arity = ArgumentArity.OneOrMore };
        var status = new Option<string?>("--status") { Description = "unreviewed, confirmed, doubtful or rejected.", HelpName = "STATUS" };
        var taxon = new Option<string?>("--taxon") { Description = "taxonID that the records are identified as afresh.", HelpName = "TAXON" };
        var decide = new Command("decide", "Decide on records.") { records, status, taxon, Reason, By, CommonOptions.Data, CommonOptions.Json };
        decide.SetAction(parsed =>
        {
            var marks = parsed.GetRequiredValue(records).Select(text => new RecordMark(RecordAsk.Id(text), null)).ToList();
            var decision = new Decision(marks, parsed.GetRequiredValue(By), parsed.GetRequiredValue(Reason))
            {
                Status = RecordAsk.Status(parsed.GetValue(status), "--status"),
                TaxonId = parsed.GetValue(taxon),
            };
            DecisionRules.Check(decision);
            return Tell(parsed, context, Decisions(parsed, context).Decide(decision));
        });
        var number = new Argument<long>("number") { Description = "Number of the decision." };
        var undo = new Command("undo", "Take a decision back: each record stands as it did before.") { number, Reason, By, CommonOptions.Data, CommonOptions.Json };
        undo.SetAction(parsed => Tell(parsed, context, Decisions(parsed, context).Reverse(parsed.GetRequiredValue(number), parsed.GetRequiredValue(By), parsed.GetRequiredValue(Reason))));
        return new("review", "Decide on records, and take decisions back.") { decide, undo, History(context) };
    }

    private static Command History(CommandContext context)
    {
        var command = new Command("history", "List the newest decisions.") { CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            foreach (var set in new DecisionHistory(FolderOf(parsed).Database).Newest(100))
            {
                if (parsed.GetValue(CommonOptions.Json))
                    context.WriteJson(set);
                else
                    context.Out.WriteLine(FormattableString.Invariant($"{set.Number,4}  {set.MadeAt}  {set.MadeBy}: {set.Records:N0} records. {set.Reason}{(set.ReversedBy is { } by ? $" (taken back by {by})" : "")}"));
            }
        });
        return command;
    }

    private static int Tell(ParseResult parsed, CommandContext context, DecisionAnswer answer)
    {
        if (parsed.GetValue(CommonOptions.Json))
            context.WriteJson(DecisionJson.Of(answer));
        else
            context.Out.WriteLine(answer.Number is { } number ? FormattableString.Invariant($"Decision {number}: {answer.Changed:N0} records.") : "Nothing was decided.");
        foreach (var missing in answer.Missing)
            context.Error.WriteLine($"  There is no record {missing}.");
        foreach (var later in answer.DecidedLater)
            context.Error.WriteLine($"  {later} stays as somebody decided later.");
        return answer.Missing.Count > 0 ? ExitCode.Failed : ExitCode.Done;
    }

    private static DecisionStore Decisions(ParseResult parsed, CommandContext context) =>
        new(FolderOf(parsed).Database, context.Clock);

    private static DataFolder FolderOf(ParseResult parsed) => DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
}
