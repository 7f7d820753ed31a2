using System.CommandLine;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary><c>rangemap forecast</c>: where a spreading taxon will be, and which squares to search.</summary>
internal static class ForecastCommand
{
    public static Command Make(CommandContext context)
    {
        var taxon = new Argument<string>("taxon") { Description = "Identifier or scientific name." };
        var year = new Option<int?>("--year") { Description = "The year to foretell; the one after the last visits where none is named.", HelpName = "YEAR" };
        var format = new Option<string>("--format") { Description = "text, or geojson for the chance of every square.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "geojson");
        var command = new Command("forecast", "Foretell where a spreading taxon will be, name squares to search, and tell how past forecasts did.")
        {
            taxon, year, format, CommonOptions.Grid, CommonOptions.Output, CommonOptions.Data, CommonOptions.Json,
        };
        command.SetAction(async (parsed, cancel) =>
        {
            var data = CurrentData.Of(DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data)), context.Clock).Now();
            var answer = ForecastSpread.Answer(data, data.Find(parsed.GetRequiredValue(taxon)), Ask.Size(parsed.GetValue(CommonOptions.Grid)), parsed.GetValue(year));
            if (parsed.GetRequiredValue(format) == "geojson")
            {
                await context.DeliverAsync(parsed.GetValue(CommonOptions.Output), to => ForecastGeoJson.WriteAsync(
                    to, answer.Size, answer.Forecast.Now, answer.Forecast.Year, ForecastSpread.Squares(answer), Caption.Of(data, answer.Taxon), cancel));
                return;
            }

            var forecast = ForecastJson.Of(data, answer);
            if (parsed.GetValue(CommonOptions.Json))
                context.WriteJson(forecast);
            else
                Write(context.Out, forecast);
        });
        return command;
    }

    private static void Write(TextWriter to, ForecastJson forecast)
    {
        to.WriteLine(FormattableString.Invariant(
            $"By the end of {forecast.Year} the species is expected in {forecast.ExpectedSquares:0} squares where it was never found ({forecast.Low:0} to {forecast.High:0}). Last visits: {forecast.Now}."));
        to.WriteLine(forecast.Speed is { } speed
            ? FormattableString.Invariant($"Its arrival years advance by {speed.KmPerYear:0.0} km a year (95 % interval {speed.Low:0.0} to {speed.High:0.0}; {speed.N} squares).")
            : "Its speed is not measurable from arrival years.");
        foreach (var part in forecast.Speeds)
            to.WriteLine(FormattableString.Invariant($"  {part.Name,-20}{part.KmPerYear,8:0.0} km a year ({part.Low:0.0} to {part.High:0.0}; {part.N} squares)"));
        to.WriteLine();
        to.WriteLine($"{"square",-10}{"there by then",14}{"a visit finds",15}{"visits",8}");
        foreach (var square in forecast.Search)
            to.WriteLine(FormattableString.Invariant($"{square.Square,-10}{square.Probability,14:0.00}{square.Find,15:0.00}{square.Visits,8}  {square.Why}"));
        to.WriteLine();
        to.WriteLine($"{"square",-10}{"reached next",14}{"there already",15}");
        foreach (var square in forecast.Ahead)
            to.WriteLine(FormattableString.Invariant($"{square.Square,-10}{square.Arrives,14:0.00}{square.There,15:0.00}"));
        if (forecast.Search.Count > 0 && forecast.Weeks.Count > 0)
            to.WriteLine($"Best weeks of the year: {string.Join(", ", forecast.Weeks)}.");
        to.WriteLine(forecast.Caution);
        to.WriteLine();
        to.WriteLine($"{"forecast of",-14}{"Brier",8}{"skill",8}{"beside",8}{"distance",10}{"AUC",8}{"slope",8}{"n",8}");
        foreach (var cut in forecast.Hindcast)
        {
            to.WriteLine(cut.Refused is null
                ? FormattableString.Invariant($"{cut.Cut + 1}-{cut.Cut + cut.Horizon,-9}{cut.Brier,8:0.000}{cut.Skill,8:0.00}{cut.SkillAgainstNeighbours,8:0.00}{cut.SkillAgainstDistance,10:0.00}{cut.Auc,8:0.00}{cut.Slope,8:0.00}{cut.N,8}")
                : FormattableString.Invariant($"{cut.Cut + 1}-{cut.Cut + cut.Horizon,-9}  {cut.Refused}"));
        }
    }
}
