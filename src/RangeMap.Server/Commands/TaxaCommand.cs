using System.CommandLine;

namespace RangeMap.Server;

/// <summary><c>rangemap taxa</c>: loads or updates the taxon list.</summary>
internal static class TaxaCommand
{
    public static Command Make(CommandContext context)
    {
        var file = new Argument<string>("file") { Description = "CSV, one row a name; taxonID and scientificName are required." };
        var command = new Command("taxa", "Load or update the taxon list: names, synonyms, aggregates, checks.") { file, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var path = Ask.File(parsed.GetRequiredValue(file));
            var answer = LoadTaxonList.Run(DataFolder.Open(parsed.GetRequiredValue(CommonOptions.Data)), path, context.Clock);
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(answer);
            else
                Write(context.Out, answer);
            return answer.Refusals.Count > 0 ? ExitCode.DoneWithRefusals : ExitCode.Done;
        });
        return command;
    }

    public static void Write(TextWriter to, TaxonListAnswer answer)
    {
        to.WriteLine(FormattableString.Invariant($"{answer.Taxa} taxa and {answer.Synonyms} other names loaded, {answer.Refusals.Count} rows refused."));
        foreach (var refusal in answer.Refusals)
            to.WriteLine(FormattableString.Invariant($"  line {refusal.Line}, {(refusal.Field.Length > 0 ? refusal.Field : "the row")}: {refusal.Reason}"));
        foreach (var merge in answer.Merges)
            to.WriteLine(FormattableString.Invariant($"  {merge.Words} {merge.Records:N0} records follow (rangemap taxon undo {merge.Number} takes it back)."));
        if (answer.UnknownColumns.Count > 0)
            to.WriteLine($"  Kept, but of unknown meaning: {string.Join(", ", answer.UnknownColumns)}");
    }
}
