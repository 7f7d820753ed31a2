namespace RangeMap.Presence;

/// <summary>When a taxon is about and what it visits, by period.</summary>
/// <param name="Quality">Which records count.</param>
/// <param name="Periods">One for each period asked, in that order.</param>
/// <param name="Omitted">What could not be counted.</param>
public sealed record SeasonChart(Quality Quality, IReadOnlyList<SeasonPeriod> Periods, SeasonOmissions Omitted);

/// <summary>The season of one period.</summary>
/// <param name="Period">The period.</param>
/// <param name="Stages">Each stage with records, by name; those without a stage last.</param>
/// <param name="Plants">Each plant, the most visited first.</param>
/// <param name="Records">Records counted in the period, dated to a week or not.</param>
public sealed record SeasonPeriod(Period Period, IReadOnlyList<StageWeeks> Stages, IReadOnlyList<PlantVisits> Plants, int Records);

/// <summary>When one stage was recorded.</summary>
/// <param name="Stage">Stage or caste; null for records that state none.</param>
/// <param name="Weeks">Records in each ISO 8601 week of the year: 53 numbers, the first for week 1.</param>
public sealed record StageWeeks(string? Stage, IReadOnlyList<int> Weeks)
{
    /// <summary>Records of all weeks.</summary>
    public int Records => Weeks.Sum();
}

/// <summary>How often a plant was visited.</summary>
/// <param name="Plant">As most records write it; case does not count.</param>
/// <param name="Records">Records that name it.</param>
public readonly record struct PlantVisits(string Plant, int Records);

/// <summary>Records that a season leaves out.</summary>
/// <param name="TooVague">Dated to more than seven days: counted in their period and for their plant, in no week.</param>
/// <param name="BetweenPeriods">In none of the periods as a whole.</param>
/// <param name="BelowQuality">Of lower quality than asked.</param>
public readonly record struct SeasonOmissions(int TooVague, int BetweenPeriods, int BelowQuality);
