using System.CommandLine;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap taxon</c>: renames, merges and splits taxa of the list, tells what was changed, and takes it back.</summary>
internal static class TaxonCommand
{
    private static readonly Argument<string> Taxon = new("taxon") { Description = "taxonID of the list." };
    private static readonly Option<string> Reason = new("--reason") { Description = "Why; stands in the history.", HelpName = "TEXT", DefaultValueFactory = _ => "" };
    private static readonly Option<string> By = new("--by") { Description = "Who; stands in the history.", HelpName = "NAME", DefaultValueFactory = _ => "command line" };

    public static Command Make(CommandContext context) => new("taxon", "Rename, merge or split taxa of the list; see and take back such changes.")
    {
        Rename(context),
        Merge(context),
        Split(context),
        List(context),
        Undo(context),
    };

    private static Command Rename(CommandContext context)
    {
        var name = new Argument<string>("name") { Description = "The new scientific name, without authorship." };
        var authorship = new Option<string?>("--authorship") { Description = "Authorship of the new name.", HelpName = "TEXT" };
        var command = new Command("rename", "Give a taxon another name; the old one stays as a synonym.") { Taxon, name, authorship, Reason, By, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed => Tell(parsed, context, Changes(parsed, context).Rename(
            parsed.GetRequiredValue(Taxon), parsed.GetRequiredValue(name), parsed.GetValue(authorship), parsed.GetRequiredValue(By), parsed.GetRequiredValue(Reason))));
        return command;
    }

    private static Command Merge(CommandContext context)
    {
        var into = new Argument<string>("into") { Description = "taxonID of the taxon that stays." };
        var command = new Command("merge", "Merge a taxon into another: its records and names go over.") { Taxon, into, Reason, By, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed => Tell(parsed, context, Changes(parsed, context).Merge(
            parsed.GetRequiredValue(Taxon), parsed.GetRequiredValue(into), parsed.GetRequiredValue(By), parsed.GetRequiredValue(Reason))));
        return command;
    }

    private static Command Split(CommandContext context)
    {
        var rules = new Option<string[]>("--rule")
        {
            Description = "Which records go to which part, such as \"t2: squares=NZ NY25; from=2005-01-01; stage=queen\". The first rule that a record fits counts; the rest stay with the aggregate.",
            HelpName = "PART: CONDITIONS",
            Required = true,
        };
        var command = new Command("split", "Split a taxon: it becomes the aggregate of its parts.") { Taxon, rules, Reason, By, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed => Tell(parsed, context, Changes(parsed, context).Split(
            parsed.GetRequiredValue(Taxon), [.. parsed.GetRequiredValue(rules).Select(SplitRuleText.Parse)], parsed.GetRequiredValue(By), parsed.GetRequiredValue(Reason))));
        return command;
    }

    private static Command List(CommandContext context)
    {
        var command = new Command("changes", "List the changes, newest first.") { CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            foreach (var change in Changes(parsed, context).ReadAll())
            {
                if (parsed.GetValue(CommonOptions.Json))
                    context.WriteJson(change);
                else
                    context.Out.WriteLine($"{change.Number,4}  {change.MadeAt}  {change.MadeBy}: {change.Words} {change.Reason}{(change.UndoneAt is { } at ? $" (taken back {at})" : "")}");
            }
        });
        return command;
    }

    private static Command Undo(CommandContext context)
    {
        var number = new Argument<long>("number") { Description = "Number of the change." };
        var command = new Command("undo", "Take a change back; later decisions of people stay.") { number, By, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed => Tell(parsed, context, Changes(parsed, context).Undo(parsed.GetRequiredValue(number), parsed.GetRequiredValue(By))));
        return command;
    }

    private static void Tell(ParseResult parsed, CommandContext context, TaxonChangeAnswer answer)
    {
        if (parsed.GetValue(CommonOptions.Json))
        {
            context.WriteJson(answer);
            return;
        }

        context.Out.WriteLine(FormattableString.Invariant($"{answer.Words} {answer.Records:N0} records were identified afresh. (change {answer.Number})"));
        if (answer.DecidedLater > 0)
            context.Out.WriteLine(FormattableString.Invariant($"  {answer.DecidedLater:N0} records stay as people decided later."));
    }

    private static TaxonChangeStore Changes(ParseResult parsed, CommandContext context) =>
        new(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)).Database, context.Clock);
}
