using System.Text.Json;
using RangeMap.Presence;

namespace RangeMap.Server;

/// <summary>When a taxon is about, stage by stage, and at which plants.</summary>
internal static class SeasonEndpoints
{
    public static void MapSeason(this RouteGroupBuilder api) =>
        api.MapGet("/taxa/{taxon}/season", Season)
            .WithTags("Season")
            .WithSummary("Records by week and stage and by plant visited, for each period, with what the list says of the season.");

    private static SeasonJson Season(CurrentData current, string taxon, string? periods = null, string? quality = null)
    {
        var data = current.Now();
        var found = data.Find(taxon);
        return SeasonJson.Of(data, found, SeasonFold.Fold(data.Season(found), Ask.Periods(periods), Ask.Quality(quality)));
    }
}

/// <summary>A season.</summary>
/// <param name="Taxon">taxonID.</param>
/// <param name="ScientificName">Its name.</param>
/// <param name="Quality">Which records count: usable, confirmed or all.</param>
/// <param name="Periods">One for each period asked for.</param>
/// <param name="LeftOut">Records that count in no week or period.</param>
/// <param name="Expected">What the taxon list says of the season, where it does.</param>
/// <param name="Marks">How to tell the taxon from others, where the list says it.</param>
internal sealed record SeasonJson(
    string Taxon, string ScientificName, string Quality, IReadOnlyList<SeasonPeriodJson> Periods, SeasonLeftOutJson LeftOut, IReadOnlyList<MarkJson> Expected, MarksJson? Marks)
{
    public static SeasonJson Of(DataSnapshot data, Records.Taxon taxon, SeasonChart chart) => new(
        taxon.Id, taxon.ScientificName, JsonNamingPolicy.CamelCase.ConvertName(chart.Quality.ToString()), [.. chart.Periods.Select(SeasonPeriodJson.Of)],
        new(chart.Omitted.TooVague, chart.Omitted.BetweenPeriods, chart.Omitted.BelowQuality),
        [.. taxon.Marks.Season.Entries.Select(entry => new MarkJson(entry.Stage, entry.Value.ToString()!))], MarksJson.Of(data, taxon));
}

/// <summary>The season of one period.</summary>
/// <param name="Period">As asked for.</param>
/// <param name="Records">Records of the period that count, vague ones too.</param>
/// <param name="Stages">Records of each ISO week, 1 to 53, by stage; stage null where none is stated.</param>
/// <param name="Plants">Plants visited or hosts, the most visited first.</param>
internal sealed record SeasonPeriodJson(string Period, int Records, IReadOnlyList<StageWeeksJson> Stages, IReadOnlyList<PlantJson> Plants)
{
    public static SeasonPeriodJson Of(SeasonPeriod period) => new(
        period.Period.Text, period.Records, [.. period.Stages.Select(stage => new StageWeeksJson(stage.Stage, stage.Records, stage.Weeks))],
        [.. period.Plants.Select(plant => new PlantJson(plant.Plant, plant.Records))]);
}

/// <summary>When one stage was recorded.</summary>
internal sealed record StageWeeksJson(string? Stage, int Records, IReadOnlyList<int> Weeks);

/// <summary>A plant and the records that name it.</summary>
internal sealed record PlantJson(string Plant, int Records);

/// <summary>Records that a season leaves out.</summary>
/// <param name="TooVague">Of a span of more than a week.</param>
/// <param name="BetweenPeriods">Wholly inside none of the periods.</param>
/// <param name="BelowQuality">Of less quality than asked for.</param>
internal sealed record SeasonLeftOutJson(int TooVague, int BetweenPeriods, int BelowQuality);
