using System.Text;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>How ranges changed between two periods.</summary>
internal static class ChangeEndpoints
{
    public static void MapChange(this RouteGroupBuilder api)
    {
        api.MapGet("/taxa/{taxon}/change", OfTaxon)
            .WithTags("Change")
            .WithSummary("Change of a taxon's range between two periods by several methods, each with interval and number of squares, or the reason why there is none. format=geojson gives gained, lost and unknown squares, format=csv a table.")
            .Produces<ChangeJson>()
            .AlsoProduces<FatesShape>(PresenceGeoJson.MediaType);
        api.MapGet("/change", OfAll)
            .WithTags("Change")
            .WithSummary("The same for every taxon of every group. format=csv gives a table.")
            .Produces<ChangeJson>();
    }

    private static IResult OfTaxon(CurrentData current, string taxon, string? grid = null, string? from = null, string? to = null, string? quality = null, string? format = null)
    {
        var data = current.Now();
        var question = ChangeQuestion.Of(grid, from, to, quality);
        var change = MeasureChange.Of(data, data.Find(taxon), question);
        return format switch
        {
            null or "json" => Results.Json(ChangeJson.Of(data, question, [change])),
            "csv" => Csv(ChangeJson.Of(data, question, [change]), $"{change.Taxon.Id}-change.csv"),
            "geojson" => Results.Stream(
                output => FatesGeoJson.WriteAsync(
                    output, question.Size, question.From.Text, question.To.Text, change.Fates.Select(fate => new SquareChange(fate.Square, FateWords.Of(fate.Fate))), Caption.Of(data, change.Taxon)),
                PresenceGeoJson.MediaType),
            _ => throw new UserException($"'{format}' is no format of reports of change.", "format", "Use json, csv or geojson."),
        };
    }

    private static IResult OfAll(CurrentData current, string? grid = null, string? from = null, string? to = null, string? quality = null, string? format = null)
    {
        var data = current.Now();
        var question = ChangeQuestion.Of(grid, from, to, quality);
        var all = ChangeJson.Of(data, question, MeasureChange.OfAll(data, question));
        return format switch
        {
            null or "json" => Results.Json(all),
            "csv" => Csv(all, "change.csv"),
            _ => throw new UserException($"'{format}' is no format of tables of change.", "format", "Use json or csv."),
        };
    }

    private static IResult Csv(ChangeJson change, string name)
    {
        using var text = new StringWriter();
        ChangeTable.Write(text, change);
        return Results.File(Encoding.UTF8.GetBytes(text.ToString()), ChangeTable.MediaType, name);
    }
}
