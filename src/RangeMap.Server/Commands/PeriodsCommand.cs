using System.CommandLine;

namespace RangeMap.Server;

/// <summary><c>rangemap periods</c>: the periods that maps of the scheme begin with.</summary>
internal static class PeriodsCommand
{
    private static readonly Option<string> Reason = new("--reason") { Description = "Why; stands in the history.", HelpName = "TEXT", Required = true };
    private static readonly Option<string> By = new("--by") { Description = "Who; stands in the history.", HelpName = "NAME", DefaultValueFactory = _ => "command line" };

    public static Command Make(CommandContext context) => new("periods", "Set the periods that maps begin with; see their history and go back in it.")
    {
        List(context),
        Set(context),
        History(context),
        Restore(context),
    };

    private static Command List(CommandContext context)
    {
        var command = new Command("list", "List the periods that hold.") { CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed => Tell(parsed, context));
        return command;
    }

    private static Command Set(CommandContext context)
    {
        var periods = new Argument<string[]>("NAME=PERIOD") { Description = "Periods, oldest first, such as \"first survey=1990/1999\".", Arity = ArgumentArity.OneOrMore };
        var gaps = new Option<bool>("--gaps") { Description = "Days between the periods belong to none on purpose." };
        var command = new Command("set", "Set the periods.") { periods, gaps, Reason, By, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            Periods(parsed, context).Set([.. parsed.GetRequiredValue(periods).Select(Named)], parsed.GetValue(gaps), parsed.GetRequiredValue(By), parsed.GetRequiredValue(Reason));
            Tell(parsed, context);
        });
        return command;
    }

    private static Command History(CommandContext context)
    {
        var command = new Command("history", "List every change, newest first.") { CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            foreach (var change in Periods(parsed, context).History().Select(PeriodChangeJson.Of))
            {
                if (parsed.GetValue(CommonOptions.Json))
                    context.WriteJson(change);
                else
                    context.Out.WriteLine(FormattableString.Invariant($"{change.Number,4}  {change.At}  {change.By}: {string.Join(", ", change.Periods.Select(Words))}. {change.Reason}"));
            }
        });
        return command;
    }

    private static Command Restore(CommandContext context)
    {
        var number = new Argument<long>("number") { Description = "Number of the change; 0 for what the program brings." };
        var command = new Command("restore", "Go back to the periods of an earlier change.") { number, Reason, By, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            Periods(parsed, context).Restore(parsed.GetRequiredValue(number), parsed.GetRequiredValue(By), parsed.GetRequiredValue(Reason));
            Tell(parsed, context);
        });
        return command;
    }

    private static NamedPeriod Named(string text) => text.LastIndexOf('=') is > 0 and var at
        ? new(text[..at], text[(at + 1)..])
        : throw new UserException($"'{text}' is no named period.", "periods", "Write NAME=PERIOD, such as \"first survey=1990/1999\".") { IsArgument = true };

    private static void Tell(ParseResult parsed, CommandContext context)
    {
        foreach (var period in Periods(parsed, context).Now())
        {
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(period);
            else
                context.Out.WriteLine(Words(period));
        }
    }

    private static string Words(NamedPeriod period) => $"{period.Name} ({period.Period})";

    private static SchemePeriods Periods(ParseResult parsed, CommandContext context) => new(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)), context.Clock);
}
