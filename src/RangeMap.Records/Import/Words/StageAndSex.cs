namespace RangeMap.Records;

/// <summary>
/// Stage and sex of a row. Each is understood wherever it was written: a caste in the column of sexes, a sex in that of stages.
/// What is not understood stays as written.
/// </summary>
/// <param name="Stage">Stage or caste, or null.</param>
/// <param name="Sex">Sex, or null.</param>
internal readonly record struct StageAndSex(string? Stage, string? Sex)
{
    /// <summary>Understands both cells.</summary>
    /// <param name="stageText">Trimmed cell of caste or stage.</param>
    /// <param name="sexText">Trimmed cell of sex.</param>
    /// <param name="pool">Keeps what is not understood.</param>
    public static StageAndSex Read(ReadOnlySpan<char> stageText, ReadOnlySpan<char> sexText, TextPool pool)
    {
        if (stageText.IsEmpty && sexText.IsEmpty)
            return default;
        var stage = ControlledWords.Stages.Find(stageText);
        var sex = ControlledWords.Sexes.Find(sexText);
        if (ControlledWords.Stages.Find(sexText) is { } misplaced and not ("male" or "female"))
            return WithStageFromSexColumn(stageText, stage, misplaced, pool);
        var sexInStageColumn = ControlledWords.Sexes.Find(stageText);
        if (sexInStageColumn is null or "undetermined")
            return new(stage ?? pool.Get(stageText), sex ?? pool.Get(sexText));
        // "male" and "female" are castes of some animals, and stay the stage; signs and initials only ever mean the sex.
        var agree = sexText.IsEmpty || sex == sexInStageColumn || sex == StageKind.SexOf(stage);
        return new(stage ?? (agree ? null : pool.Get(stageText)), sexText.IsEmpty ? SexFrom(stage, sexInStageColumn) : sex ?? pool.Get(sexText));
    }

    private static StageAndSex WithStageFromSexColumn(ReadOnlySpan<char> stageText, string? stage, string misplaced, TextPool pool)
    {
        var sex = ControlledWords.Sexes.Find(stageText) ?? StageKind.SexOf(misplaced);
        if (stageText.IsEmpty || stage is "adult" or "male" or "female" || (stage is null && ControlledWords.Sexes.Find(stageText) is not null))
            return new(misplaced, sex);
        return new(stage ?? pool.Get(stageText), StageKind.SexOf(misplaced));
    }

    /// <summary>A queen in the column of stages says nothing of the sex that needs repeating; "male" there is both.</summary>
    private static string? SexFrom(string? stage, string sexInStageColumn) => stage is "queen" or "worker" ? null : sexInStageColumn;
}
