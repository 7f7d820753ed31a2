using RangeMap.Records;

namespace RangeMap.Presence;

/// <summary>Records of a taxon that share stage, plant and days.</summary>
/// <param name="Stage">Stage or caste; null where none is stated.</param>
/// <param name="Host">Plant visited, or host, as written; several with bars between; null where none is stated.</param>
/// <param name="Dates">The possible days.</param>
/// <param name="Counts">How many records, by quality.</param>
public readonly record struct SeasonEntry(string? Stage, string? Host, DayRange Dates, QualityCounts Counts)
{
    /// <summary>The entry that a record adds, or false when it adds none: absences and rejected records say nothing of a season.</summary>
    public static bool TryOf(Record record, out SeasonEntry entry)
    {
        var counts = record.Present && record.Status != ReviewStatus.Rejected;
        entry = counts ? new(record.Stage ?? StageOf(record.Sex), record.Host, record.Dates, CubeFold.Count(record.Status, record.Doubts)) : default;
        return counts;
    }

    /// <summary>A record that states no stage but one sex shows when that sex is about.</summary>
    public static string? StageOf(string? sex) => sex is "male" or "female" ? sex : null;
}
