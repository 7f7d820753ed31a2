using System.CommandLine;

namespace RangeMap.Server;

/// <summary><c>rangemap edition</c>: freezes the live state so that it can be cited, lists and withdraws frozen editions.</summary>
internal static class EditionCommand
{
    public static Command Make(CommandContext context) => new("edition", "Freeze the data so that they can be cited and asked for again.") { Freeze(context), List(context), Withdraw(context) };

    private static Command Freeze(CommandContext context)
    {
        var title = new Option<string?>("--title") { Description = "Title of the edition; that of the data where none is named.", HelpName = "TEXT" };
        var reason = new Option<string?>("--reason") { Description = "Why, for those who cite it.", HelpName = "TEXT" };
        var command = new Command("freeze", "Freeze the live state; places of sensitive species are generalised in it.") { title, reason, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
            var data = new CurrentData(folder.Database, context.Clock).Now();
            Tell(context, parsed.GetValue(CommonOptions.Json), FreezeEdition.Run(folder, data, parsed.GetValue(title), parsed.GetValue(reason), context.Clock.GetUtcNow()).Edition);
        });
        return command;
    }

    private static Command List(CommandContext context)
    {
        var command = new Command("list", "List the frozen editions, the newest first.") { CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var editions = new FrozenEditions(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)).Path).All();
            foreach (var edition in editions)
                Tell(context, parsed.GetValue(CommonOptions.Json), edition);
            if (editions.Count == 0 && !parsed.GetValue(CommonOptions.Json))
                context.Out.WriteLine("Nothing is frozen yet; rangemap edition freeze does it.");
        });
        return command;
    }

    private static Command Withdraw(CommandContext context)
    {
        var id = new Argument<string>("edition") { Description = "Identifier, or its first eight digits." };
        var reason = new Option<string>("--reason") { Description = "Why, for those who cited it.", HelpName = "TEXT", Required = true };
        var command = new Command("withdraw", "Delete the content of an edition that should not have been published; that it was there stays known.") { id, reason, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var editions = new FrozenEditions(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)).Path);
            Tell(context, parsed.GetValue(CommonOptions.Json), editions.Withdraw(parsed.GetRequiredValue(id), parsed.GetRequiredValue(reason)));
        });
        return command;
    }

    private static void Tell(CommandContext context, bool json, FrozenEdition edition)
    {
        if (json)
        {
            context.WriteJson(edition);
            return;
        }

        context.Out.WriteLine($"{edition.Id}  {edition.Title}, frozen {edition.FrozenAt[..10]}{(edition.Withdrawn is { } why ? $", withdrawn: {why}" : "")}");
        context.Out.WriteLine(FormattableString.Invariant($"  {edition.Taxa} taxa, {edition.Records} records, {edition.Squares} squares of 10 km, {edition.Visits} visits; live state {edition.LiveState}"));
        if (edition.Reason is { } reason)
            context.Out.WriteLine($"  frozen because: {reason}");
        context.Out.WriteLine($"  cite as: {edition.Citation}");
        foreach (var share in edition.Licences)
            context.Out.WriteLine(FormattableString.Invariant($"  {share.Title ?? share.Dataset}: {share.Licence ?? share.Url ?? "no licence stated"} ({share.Records} records)"));
    }
}
