using System.CommandLine;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary><c>rangemap map</c>: a map to print.</summary>
internal static class MapCommand
{
    public static Command Make(CommandContext context)
    {
        var taxon = new Argument<string>("taxon") { Description = "Identifier or scientific name." };
        var output = new Option<string>("--output", "-o") { Description = "File to write; its ending, .svg, .png or .pdf, is the format.", HelpName = "FILE", Required = true };
        var kind = new Option<string?>("--kind") { Description = "presence, arrivals or change.", HelpName = "KIND" };
        var periods = new Option<string?>("--periods") { Description = "For presence: ISO 8601 intervals with commas between them, the oldest first, such as ../1999,2000/2009,2010/.. .", HelpName = "LIST" };
        var from = new Option<string?>("--from") { Description = "For change: the earlier period, such as 1990/1999.", HelpName = "PERIOD" };
        var to = new Option<string?>("--to") { Description = "For change: the later period, such as 2010/2019.", HelpName = "PERIOD" };
        var size = new Option<string?>("--size") { Description = "page (A4) or column (90 mm).", HelpName = "SIZE" };
        var ink = new Option<string?>("--ink") { Description = "colour, or black for patterns that copies keep.", HelpName = "INK" };
        var command = new Command("map", "Draw a map to print: SVG, PNG or PDF.")
        {
            taxon, output, kind, CommonOptions.Grid, periods, CommonOptions.Quality, CommonOptions.Region, from, to, size, ink, CommonOptions.Data, CommonOptions.Json,
        };
        command.SetAction(parsed =>
        {
            var file = parsed.GetRequiredValue(output);
            var format = FormatOf(file);
            var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
            var data = new CurrentData(folder.Database, context.Clock).Now();
            var question = PrintQuestion.Of(data, parsed.GetRequiredValue(taxon), new(
                parsed.GetValue(kind), parsed.GetValue(CommonOptions.Grid), parsed.GetValue(periods), parsed.GetValue(CommonOptions.Quality), parsed.GetValue(CommonOptions.Region), parsed.GetValue(from),
                parsed.GetValue(to), parsed.GetValue(size), parsed.GetValue(ink)));
            var bytes = PrintMap.Answer(data, folder, question, format);
            File.WriteAllBytes(file, bytes);
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(new { Taxon = question.Taxon.Id, File = file, Bytes = bytes.Length, Edition = data.Edition.Number });
            else
                context.Out.WriteLine(FormattableString.Invariant($"{file}: {bytes.Length} bytes, edition {data.Edition.Number}."));
        });
        return command;
    }

    private static PrintFormat FormatOf(string file) => Path.GetExtension(file).ToUpperInvariant() switch
    {
        ".SVG" => PrintFormat.Svg,
        ".PNG" => PrintFormat.Png,
        ".PDF" => PrintFormat.Pdf,
        _ => throw new UserException($"The ending of '{file}' is no format of printed maps.", "--output", "Name a file that ends in .svg, .png or .pdf.") { IsArgument = true },
    };
}
