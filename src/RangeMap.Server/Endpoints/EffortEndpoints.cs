using System.Globalization;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>Where recorders looked.</summary>
internal static class EffortEndpoints
{
    public static void MapEffort(this RouteGroupBuilder api) =>
        api.MapGet("/effort", Effort)
            .WithTags("Change")
            .WithSummary("Visits, recorders, taxa and coverage of every square in two periods, with similarity and turnover where it was well surveyed in both, as GeoJSON.")
            .Produces<EffortShape>(contentType: PresenceGeoJson.MediaType);

    private static IResult Effort(CurrentData current, string? group = null, string? taxon = null, string? grid = null, string? from = null, string? to = null)
    {
        var data = current.Now();
        var question = ChangeQuestion.Of(grid, from, to, null);
        var (named, squares) = taxon is null ? MeasureEffort.Answer(data, group, question) : MeasureEffort.OfGroup(data, data.Find(taxon).Group, question);
        return Results.Stream(
            output => EffortGeoJson.WriteAsync(output, question.Size, question.From.Text, question.To.Text, squares, named, data.Edition.Number.ToString(CultureInfo.InvariantCulture)),
            PresenceGeoJson.MediaType);
    }
}
