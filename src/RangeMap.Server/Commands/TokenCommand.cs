using System.CommandLine;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap token</c>: makes, lists and revokes the tokens by which people write over HTTP.</summary>
internal static class TokenCommand
{
    public static Command Make(CommandContext context) => new("token", "Make, list or revoke tokens for sending files, reviewing and organising over HTTP.")
    {
        Create(context),
        List(context),
        Revoke(context),
    };

    private static Command Create(CommandContext context)
    {
        var name = new Argument<string>("name") { Description = "Whose token it is; stands beside that person's decisions." };
        var rights = new Option<string[]>("--right") { Description = "What it allows; all where none is named.", HelpName = "import|review|organise", AllowMultipleArgumentsPerToken = true };
        rights.AcceptOnlyFromAmong([.. RightText.All.Keys]);
        var command = new Command("create", "Make a token. It is told once and cannot be had again.") { name, rights, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var owner = parsed.GetRequiredValue(name).Trim();
            if (owner.Length == 0)
                throw new UserException("The token has no name.", "name", "Name the person that it is for.") { IsArgument = true };
            var allowed = parsed.GetValue(rights) is { Length: > 0 } named ? named.Distinct().ToList() : [.. RightText.All.Keys];
            var (number, secret) = Tokens(parsed, context).Make(owner, allowed);
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(new { number, name = owner, rights = allowed, token = secret });
            else
                context.Out.WriteLine($"Token {number} for {owner} ({string.Join(", ", allowed)}):\n  {secret}\nKeep it like a password. It is not shown again.");
        });
        return command;
    }

    private static Command List(CommandContext context)
    {
        var command = new Command("list", "List the tokens, without their secrets.") { CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var all = Tokens(parsed, context).ReadAll();
            if (parsed.GetValue(CommonOptions.Json))
            {
                foreach (var token in all)
                    context.WriteJson(token);
                return;
            }

            if (all.Count == 0)
                context.Out.WriteLine("There are no tokens. rangemap token create NAME makes one.");
            foreach (var token in all)
                context.Out.WriteLine($"{token.Number,4}  {token.Name}  ({token.Rights.Replace(" ", ", ", StringComparison.Ordinal)})  made {token.MadeAt}, {StateOf(token)}");
        });
        return command;
    }

    private static Command Revoke(CommandContext context)
    {
        var number = new Argument<long>("number") { Description = "Number of the token." };
        var command = new Command("revoke", "Revoke a token at once.") { number, CommonOptions.Data };
        command.SetAction(parsed =>
        {
            if (!Tokens(parsed, context).Revoke(parsed.GetRequiredValue(number)))
                throw new UserException("There is no token of this number that still counts.", "number", "rangemap token list shows them.");
            context.Out.WriteLine(FormattableString.Invariant($"Token {parsed.GetRequiredValue(number)} no longer counts."));
        });
        return command;
    }

    private static string StateOf(KnownToken token) => token switch
    {
        { RevokedAt: { } revoked } => $"revoked {revoked}",
        { LastUsedAt: { } used } => $"last used {used}",
        _ => "never used",
    };

    private static TokenStore Tokens(ParseResult parsed, CommandContext context) =>
        new(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)).Database, context.Clock);
}
