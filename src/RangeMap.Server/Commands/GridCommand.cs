using System.CommandLine;

namespace RangeMap.Server;

/// <summary><c>rangemap grid</c>: everything about places, both ways between grid references and latitude/longitude.</summary>
internal static class GridCommand
{
    public static Command Make(CommandContext context)
    {
        var places = new Argument<string[]>("place") { Description = "A grid reference (TQ3080), or \"LAT LON\" in quotes.", Arity = ArgumentArity.ZeroOrMore };
        var input = new Option<string?>("--input", "-i") { Description = "File with one place a line; - reads standard input.", HelpName = "FILE" };
        var command = new Command("grid", "Tell everything about places: every square, both ways between references and latitude/longitude.") { places, input, CommonOptions.Json };
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
                var answer = DescribePlace.Answer(place);
                failed |= !answer.Ok;
                if (json)
                    context.WriteJson(answer);
                else
                    Write(context.Out, answer);
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

    private static void Write(TextWriter to, PlaceAnswer answer)
    {
        to.WriteLine(answer.Input);
        if (!answer.Ok)
        {
            to.WriteLine($"  {answer.Error}");
            return;
        }

        to.WriteLine(FormattableString.Invariant($"  {answer.System}, {answer.Name} ({answer.Size})"));
        to.WriteLine(FormattableString.Invariant($"  easting {answer.Easting:0.###} m, northing {answer.Northing:0.###} m ({(answer.IsPoint ? "the point" : "south-west corner")})"));
        to.WriteLine(FormattableString.Invariant($"  latitude {answer.Latitude:0.000000}, longitude {answer.Longitude:0.000000} ({(answer.IsPoint ? "the point" : "middle of the square")}; good to about {answer.AccuracyMetres:0.###} m)"));
        foreach (var (size, square) in answer.Squares!)
            to.WriteLine($"  {size,6}  {square ?? "straddles two squares of this size"}");
        foreach (var note in answer.Notes ?? [])
            to.WriteLine($"  note: {note}");
    }
}
