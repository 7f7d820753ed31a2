namespace RangeMap.Records;

/// <summary>The weeks in which a taxon is about, as the taxon list has them.</summary>
/// <param name="OfStage">Those of a record's stage: of the entries that fit it best, or every week where the list does not know the stage.</param>
/// <param name="OfAny">Those of any stage.</param>
internal readonly record struct StageWeeks(WeekSet OfStage, WeekSet OfAny)
{
    public static StageWeeks Of(StageTable<WeekSet> season, string? stageKey)
    {
        var best = season.BestFit(stageKey);
        var (ofStage, ofAny) = (best == StageFit.None ? WeekSet.All : default, default(WeekSet));
        foreach (ref readonly var entry in season.Span)
        {
            ofAny = ofAny.With(entry.Value);
            if (StageKind.Fit(entry.Stage, stageKey) == best)
                ofStage = ofStage.With(entry.Value);
        }

        return new(ofStage, ofAny);
    }
}

/// <summary>Remembers <see cref="StageWeeks"/>: a file has millions of rows and few pairs of taxon and stage. Not safe for several threads at once.</summary>
internal sealed class StageWeeksMemo
{
    /// <summary>Beyond this the memory starts afresh.</summary>
    private const int MostRemembered = 100_000;

    private readonly Dictionary<(StageTable<WeekSet> Season, string? StageKey), StageWeeks> _known = [];

    public StageWeeks Of(StageTable<WeekSet> season, string? stageKey)
    {
        if (_known.TryGetValue((season, stageKey), out var weeks))
            return weeks;
        if (_known.Count == MostRemembered)
            _known.Clear();
        weeks = StageWeeks.Of(season, stageKey);
        _known.Add((season, stageKey), weeks);
        return weeks;
    }
}
