using System.CommandLine;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap names</c>: names that files use and that a person accepts once for a taxon of the list.</summary>
internal static class NamesCommand
{
    private static readonly Argument<string> Name = new("name") { Description = "The name as files write it." };

    public static Command Make(CommandContext context) => new("names", "Accept names that files use for taxa of the list; list or forget them.")
    {
        Accept(context),
        List(context),
        Forget(context),
    };

    private static Command Accept(CommandContext context)
    {
        var taxon = new Argument<string>("taxon") { Description = "taxonID that it stands for." };
        var by = new Option<string>("--by") { Description = "Who accepts it.", HelpName = "NAME", DefaultValueFactory = _ => "command line" };
        var command = new Command("accept", "Accept a name; the next file with it is read without asking.") { Name, taxon, by, CommonOptions.Data };
        command.SetAction(parsed => Names(parsed, context).Accept(parsed.GetRequiredValue(Name), parsed.GetRequiredValue(taxon), parsed.GetRequiredValue(by)));
        return command;
    }

    private static Command List(CommandContext context)
    {
        var command = new Command("list", "List the names that were accepted.") { CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            foreach (var name in Names(parsed, context).ReadAll())
            {
                if (parsed.GetValue(CommonOptions.Json))
                    context.WriteJson(name);
                else
                    context.Out.WriteLine($"{name.Name}  is  {name.TaxonName} ({name.TaxonId})  {name.AcceptedBy}, {name.AcceptedAt}");
            }
        });
        return command;
    }

    private static Command Forget(CommandContext context)
    {
        var command = new Command("forget", "Forget a name; records that were read under it stay.") { Name, CommonOptions.Data };
        command.SetAction(parsed =>
        {
            if (!Names(parsed, context).Forget(parsed.GetRequiredValue(Name)))
                throw new UserException($"The name '{parsed.GetRequiredValue(Name)}' was not accepted.", "name", "rangemap names list shows those that were.");
        });
        return command;
    }

    private static AcceptedNameStore Names(ParseResult parsed, CommandContext context) =>
        new(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)).Database, context.Clock);
}
