using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Styles of maps for map clients, and legends as data.</summary>
internal static class StyleEndpoints
{
    public static void MapStyles(this RouteGroupBuilder api)
    {
        api.MapGet("/taxa/{taxon}/style.json", Style)
            .WithTags("Tiles")
            .WithSummary("A MapLibre style document over the taxon's tiles. kind: presence (by latest period) or arrivals (by first year); paper: light or dark.")
            .Produces<object>(contentType: "application/json");
        api.MapGet("/legends/{kind}", LegendOf)
            .WithTags("Tiles")
            .WithSummary("The classes and colours of a kind of map: presence (with periods), arrivals (with taxon) or change. Viewer, styles and printed maps use the same.")
            .Produces<object>(contentType: "application/json");
    }

    private static IResult Style(
        CurrentData current, HttpRequest request, string taxon, string? kind = null, string? grid = null, string? periods = null, string? quality = null, string? paper = null)
    {
        var address = OwnAddress.Of(request);
        var data = current.Now();
        var question = PresenceQuestion.Of(data, taxon, grid, periods, quality);
        var legend = PrintQuestion.KindOf(kind) switch
        {
            PrintKind.Presence => Legend.OfPeriods(PropertyNames.Latest, question.PeriodList),
            PrintKind.Arrivals => Years(data, question),
            _ => throw new UserException("Gains and losses have no tiles.", "kind", "Ask for change?format=geojson, and for the colours at /api/v1/legends/change."),
        };
        var asked = QueryString.Create(new Dictionary<string, string?> { ["grid"] = grid, ["periods"] = periods, ["quality"] = quality }.Where(part => !string.IsNullOrEmpty(part.Value)));
        var tiles = $"{address}/api/v1/taxa/{Uri.EscapeDataString(question.Taxon.Id)}/tiles.json{asked}";
        return Results.Stream(to => MapStyle.WriteAsync(to, question.Taxon.ScientificName, tiles, legend, IsDark(paper)), "application/json");
    }

    private static IResult LegendOf(CurrentData current, string kind, string? periods = null, string? taxon = null, string? grid = null, string? quality = null)
    {
        var data = current.Now();
        switch (PrintQuestion.KindOf(kind))
        {
            case PrintKind.Presence:
                var ofPeriods = Legend.OfPeriods(PropertyNames.Latest, Ask.Periods(periods));
                return Results.Stream(to => LegendJson.WriteAsync(to, ofPeriods), "application/json");
            case PrintKind.Arrivals:
                if (string.IsNullOrWhiteSpace(taxon))
                    throw new UserException("The classes of arrivals are those of a taxon, and none is named.", "taxon", "Add taxon= with an identifier or scientific name.");
                var ofYears = Years(data, PresenceQuestion.Of(data, taxon, grid, periods, quality));
                return Results.Stream(to => LegendJson.WriteAsync(to, ofYears), "application/json");
            default:
                return Results.Stream(to => LegendJson.WriteFatesAsync(to), "application/json");
        }
    }

    private static Legend Years(DataSnapshot data, PresenceQuestion question)
    {
        var squares = AnswerPresence.Answer(data, question).Squares;
        return squares.Count == 0 ? new(PropertyNames.First, []) : Legend.OfYears(PropertyNames.First, squares.Min(square => square.FirstYear), squares.Max(square => square.FirstYear));
    }

    private static bool IsDark(string? paper) => paper?.Trim().ToUpperInvariant() switch
    {
        null or "" or "LIGHT" => false,
        "DARK" => true,
        _ => throw new UserException($"'{paper}' is no paper.", "paper", "Use light or dark."),
    };
}
