namespace RangeMap.Records.Tests;

/// <summary>
/// Seven species under letters. Lengths in mm, the year of arrival and the areas are common practice, no source; they are here to
/// try the checks with and are no data of the program.
/// </summary>
internal static class SomeSpecies
{
    private const string Seasons = "queen 9-42; worker 16-44; male 24-44";

    private const string TailEvidence = "worker: a specimen or a photograph of the hairs at the tail; queen: sighting; male: specimen";

    /// <summary>The list, with the aggregate of A and B.</summary>
    public static TaxonList List { get; } = new(
        [
            Of("A", "queen from 19; worker 11-17; male 14-16", aggregate: "AB", confusedWith: "B", evidence: TailEvidence),
            Of("B", "queen 19-20; worker 11-17; male 14-16", aggregate: "AB", confusedWith: "A", evidence: TailEvidence),
            Of("C", "queen 20-22; worker 11-16; male 14-16"),
            Of("D", "worker 10-15", knownArea: "not Scilly; not Outer Scottish isles; not Shetland"),
            Of("E", "queen to 18; worker 11-16; male to 16", firstYear: 2001),
            Of("F", "worker 11-18; male 15-16"),
            Of("G", "queen 15-17; worker 10-14; male 11-13", knownArea: "not Scilly; not Outer Hebrides; not Orkney; not Shetland"),
            new("AB", "Species A or B") { Rank = "aggregate" },
        ]);

    /// <summary>One of them.</summary>
    public static Taxon Get(string letter) => List.FindById(letter)!;

    private static Taxon Of(string letter, string lengths, string? aggregate = null, string? confusedWith = null, string? evidence = null, string? knownArea = null, int? firstYear = null)
    {
        var notes = new Dictionary<string, string?>
        {
            ["season"] = Seasons,
            ["lengthMm"] = lengths,
            ["stages"] = "queen; worker; male; egg; larva; pupa",
            ["confusedWith"] = confusedWith,
            ["evidence"] = evidence,
            ["knownArea"] = knownArea,
        };
        return new(letter, $"Species {letter}")
        {
            AggregateId = aggregate,
            FirstYear = firstYear,
            Notes = notes.Where(n => n.Value is not null).ToDictionary(n => n.Key, n => n.Value!),
        };
    }
}
