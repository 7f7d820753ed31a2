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
