namespace RangeMap.Change;

/// <summary>Caste or stage of an invented insect.</summary>
public enum InventedStage : byte
{
    /// <summary>A winged insect of a species without castes.</summary>
    Adult,

    /// <summary>A larva.</summary>
    Larva,

    /// <summary>Founder of a nest.</summary>
    Queen,

    /// <summary>Daughter that works for the nest.</summary>
    Worker,

    /// <summary>Son of a nest.</summary>
    Male,
}

/// <summary>When a stage is about and how long it is.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="FromWeek">First week, 1 to 52.</param>
/// <param name="ToWeek">Last week, not before the first.</param>
/// <param name="Share">Weight of the stage among records in full season, above 0.</param>
/// <param name="LeastMm">Least length, mm.</param>
/// <param name="MostMm">Greatest length, mm.</param>
public sealed record StageSeason(InventedStage Stage, int FromWeek, int ToWeek, double Share, double LeastMm, double MostMm)
{
    /// <summary>How much of the stage is about in a week, 0 to 1: full, but for a rise and a fall of two weeks.</summary>
    public double Level(int week) =>
        week < FromWeek || week > ToWeek ? 0 : Math.Min(1, Math.Min(week - FromWeek + 1, ToWeek - week + 1) / 3.0);
}

/// <summary>The part that a species plays.</summary>
public enum InventedRole : byte
{
    /// <summary>The range stays as it is; only recording changes.</summary>
    Resident,

    /// <summary>Lands at a port and spreads at a constant speed.</summary>
    Arriving,

    /// <summary>Lands, spreads, then stands still.</summary>
    Stalling,

    /// <summary>The southern limit moves north.</summary>
    Retreating,
}

/// <summary>One species of the invented scenario. No such species exists.</summary>
/// <param name="Name">Invented scientific name.</param>
/// <param name="Vernacular">Invented everyday name.</param>
/// <param name="Group">Species that are recorded together.</param>
/// <param name="Share">Share of the land cells that are its range, 0 to 1.</param>
/// <param name="Warmth">-1 for a species of the north to 1 for one of the south.</param>
/// <param name="Ease">Chance that a thorough visit in full season finds it where it is common, 0 to 1.</param>
/// <param name="Seasons">Its stages.</param>
public sealed record InventedSpecies(
    string Name, string Vernacular, string Group, double Share, double Warmth, double Ease, IReadOnlyList<StageSeason> Seasons)
{
    /// <summary>The part it plays.</summary>
    public InventedRole Role { get; init; }

    /// <summary>Name of the aggregate that it belongs to.</summary>
    public string? Aggregate { get; init; }

    /// <summary>Name of the species that it is mistaken for.</summary>
    public string? ConfusedWith { get; init; }

    /// <summary>What separates it from others.</summary>
    public string? Marks { get; init; }

    /// <summary>What suffices to name it.</summary>
    public string? Evidence { get; init; }

    /// <summary>Side in km of the finest square that may be shown to all; null unless sensitive.</summary>
    public int? GeneraliseToKm { get; init; }
}
