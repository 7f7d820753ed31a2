using RangeMap.Grids;
using RangeMap.TestKit;

namespace RangeMap.Records.Tests;

/// <summary>Makes records for the checks and asks them.</summary>
internal static class Checking
{
    public static CheckContext Context { get; } = new() { Taxa = SomeSpecies.List };

    /// <summary>A record of a lettered species in TQ38 on 3 June 2010, unless the test says otherwise.</summary>
    public static Record Record(string letter, string? stage = null, string? sex = null, double? mm = null, string day = "2010-06-03", string square = "TQ38") =>
        Some.Record(GridReference.Parse(square), Some.Days(day), SomeSpecies.Get(letter)) with { Stage = stage, Sex = sex, LengthMm = mm };

    /// <summary>What the checks find without asking about the surroundings.</summary>
    public static Doubts Find(Record record, CheckContext? context = null)
    {
        var checks = new RecordChecks(context ?? Context);
        return checks.FindByList(record) | checks.FindByPlace(record);
    }

    /// <summary>The words for one doubt of a record.</summary>
    public static string Words(Record record, Doubts doubt, CheckContext? context = null) =>
        new DoubtExplanations(context ?? Context).Of(record with { Doubts = doubt }).Single().What;
}
