namespace RangeMap.Records;

/// <summary>
/// A stage, caste or sex that cannot be: one that the taxon does not have, where the list names those that it has, or a caste
/// of the other sex. Words that are not known are never in doubt, for nothing is known about them.
/// </summary>
internal sealed class StageImpossible : RecordCheck
{
    public override Doubts Doubt => Doubts.StageImpossible;

    public override bool Finds(Record record) => record.Present && (record.Stage is not null || record.Sex is not null) && (IsOfOtherSex(record) || IsUnknownOfTaxon(record));

    public override string? Explain(Record record)
    {
        if (!Finds(record))
            return null;
        return IsOfOtherSex(record)
            ? $"A {record.Stage} is {StageKind.SexOf(record.Stage)}, and the record says {record.Sex}."
            : $"The list has no {StageKind.KeyOf(record.Stage, record.Sex)} of {record.Taxon.ScientificName}; it has {StagePhrase.Joined(record.Taxon.Marks.Stages)}.";
    }

    private static bool IsOfOtherSex(Record record) =>
        record.Sex is "female" or "male" && StageKind.SexOf(record.Stage) is { } sex && sex != record.Sex;

    private static bool IsUnknownOfTaxon(Record record)
    {
        var stages = record.Taxon.Marks.Stages;
        // What an animal leaves behind is no stage of it.
        if (stages.Count == 0 || StageKind.KeyOf(record.Stage, record.Sex) is not { } key || key is "nest" or "exuvia" || ControlledWords.Stages.Find(key) is null)
            return false;
        foreach (var stage in stages)
        {
            if (StageKind.Fit(stage, key) != StageFit.None)
                return false;
        }

        return true;
    }
}
