namespace RangeMap.Records;

/// <summary>What the taxon list says about recognising a taxon, understood from the text of its columns.</summary>
public sealed record TaxonMarks
{
    /// <summary>A list that says nothing.</summary>
    public static TaxonMarks None { get; } = new();

    /// <summary>Weeks in which each stage is about.</summary>
    public StageTable<WeekSet> Season { get; init; } = new([]);

    /// <summary>Body lengths in millimetres of each stage.</summary>
    public StageTable<LengthRange> LengthMm { get; init; } = new([]);

    /// <summary>Every stage and caste that the taxon has; none where the list does not say.</summary>
    public IReadOnlyList<string> Stages { get; init; } = [];

    /// <summary>Where it is known from.</summary>
    public KnownArea KnownArea { get; init; } = KnownArea.Everywhere;

    /// <summary>taxonIDs of the taxa that it is mistaken for.</summary>
    public IReadOnlyList<string> ConfusedWith { get; init; } = [];

    /// <summary>What separates it from others, by stage.</summary>
    public StageTable<string> Marks { get; init; } = new([]);

    /// <summary>What suffices to name it, by stage.</summary>
    public StageTable<SufficientEvidence> Evidence { get; init; } = new([]);

    /// <summary>Weeks by which a date may lie outside the season without a doubt; null for the default of <see cref="CheckLimits"/>.</summary>
    public double? SeasonMarginWeeks { get; init; }

    /// <summary>Millimetres by which a length may lie outside its range; null for the default.</summary>
    public double? LengthMarginMm { get; init; }

    /// <summary>Kilometres by which a place may lie outside the known area; null for the default.</summary>
    public double? AreaMarginKm { get; init; }
}
