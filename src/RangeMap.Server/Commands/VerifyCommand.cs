using System.CommandLine;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap verify</c>: looks whether a data folder is whole.</summary>
internal static class VerifyCommand
{
    public static Command Make(CommandContext context)
    {
        var command = new Command("verify", "Check that the data folder is whole and that maps and records agree.") { CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(CommonOptions.Data);
            if (!DataFolder.Exists(path))
                throw new UserException("There is no data folder here.", path, "Name it with --data.");
            var problems = new StoreVerification(DataFolder.Open(path).Database).FindProblems();
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(new { Ok = problems.Count == 0, Problems = problems });
            else
                Write(context.Out, problems);
            return problems.Count == 0 ? ExitCode.Done : ExitCode.Failed;
        });
        return command;
    }

    private static void Write(TextWriter to, IReadOnlyList<string> problems)
    {
        foreach (var problem in problems)
            to.WriteLine(problem);
        if (problems.Count == 0)
            to.WriteLine("The data folder is whole: maps, visits and counts agree with the records.");
    }
}
