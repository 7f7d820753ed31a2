using System.Globalization;
using RangeMap.Change;
using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>The taxon list of the invented world, in the columns that <c>rangemap taxa</c> reads.</summary>
internal static class InventedTaxonList
{
    private const string Header =
        "taxonID,scientificName,scientificNameAuthorship,taxonRank,vernacularName,acceptedNameUsageID,group,aggregate,generaliseTo,season,lengthMm,confusedWith,marks,evidence";

    public static void Write(TextWriter writer, SimulatedWorld world)
    {
        writer.WriteLine(Header);
        var aggregates = world.Species.Select(species => species.Aggregate).OfType<string>().Distinct();
        foreach (var aggregate in aggregates)
        {
            var member = world.Species.First(species => species.Aggregate == aggregate);
            WriteRow(writer, IdOf(aggregate), aggregate, "", "aggregate", "twin ember-wings", "", member.Group, "", "", "", "", "", "", "");
        }

        foreach (var species in world.Species)
        {
            WriteRow(
                writer, IdOf(species.Name), species.Name, "Invented", "species", species.Vernacular, "", species.Group,
                species.Aggregate is { } aggregate ? IdOf(aggregate) : "",
                species.GeneraliseToKm is { } side ? string.Create(CultureInfo.InvariantCulture, $"{side}km") : "",
                string.Join("; ", species.Seasons.Select(season => string.Create(CultureInfo.InvariantCulture, $"{StageName(season.Stage)} {season.FromWeek}-{season.ToWeek}"))),
                string.Join("; ", species.Seasons.Select(season => string.Create(CultureInfo.InvariantCulture, $"{StageName(season.Stage)} {season.LeastMm:0.#}-{season.MostMm:0.#}"))),
                species.ConfusedWith is { } other ? IdOf(other) : "", species.Marks ?? "", species.Evidence ?? "");
        }
    }

    /// <summary>The taxonID of a name: its words in small letters with hyphens between.</summary>
    public static string IdOf(string name) => name.Replace(".", "", StringComparison.Ordinal).Replace(' ', '-').ToLowerInvariant();

    public static string StageName(InventedStage stage) => stage switch
    {
        InventedStage.Queen => "queen",
        InventedStage.Worker => "worker",
        InventedStage.Male => "male",
        InventedStage.Larva => "larva",
        _ => "adult",
    };

    private static void WriteRow(TextWriter writer, params string[] cells) =>
        writer.WriteLine(string.Join(',', cells.Select(CsvCell.Of)));
}
