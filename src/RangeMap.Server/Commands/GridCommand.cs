using System.CommandLine;

namespace RangeMap.Server;

/// <summary><c>rangemap grid</c>: everything about places, both ways between grid references and latitude/longitude.</summary>
internal static class GridCommand
{
    public static Command Make(CommandContext context)
    {
        var places = new Argument<string[]>("place") { Description = "A grid reference (TQ3080), or \"LAT LON\" in quotes.", Arity = ArgumentArity.ZeroOrMore };
        var input = new Option<string?>("--input", "-i") { Description = "File with one place a line; - reads standard input.", HelpName = "FILE" };
        var outline = new Option<bool>("--outline") { Description = "Add the square's outline as a GeoJSON polygon." };
        var command = new Command("grid", "Tell everything about places: every square, both ways between references and latitude/longitude, nation or sea, neighbours, other grids.") { places, input, outline, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var named = parsed.GetValue(places) ?? [];
            var file = parsed.GetValue(input);
            if (named.Length == 0 && file is null)
                throw new UserException("No place was named.", "place", "Give a grid reference, \"LAT LON\" in quotes, or -i FILE.") { IsArgument = true };
            var json = parsed.GetValue(CommonOptions.Json);
            var failed = false;
            foreach (var place in named.Concat(file is null ? [] : Lines(context, file)))
            {
                var answer = DescribeSurroundings.Add(DescribePlace.Answer(place), parsed.GetValue(outline));
                failed |= !answer.Ok;
                if (json)
                    context.WriteJson(answer);
                else
                    PlaceWords.Write(context.Out, answer);
            }

            return failed ? ExitCode.Failed : ExitCode.Done;
        });
        return command;
    }

    private static IEnumerable<string> Lines(CommandContext context, string file)
    {
        using var opened = file == "-" ? null : new StreamReader(file);
        var reader = opened ?? context.In;
        while (reader.ReadLine() is { } line)
        {
            if (!string.IsNullOrWhiteSpace(line))
                yield return line.Trim();
        }
    }
}
