namespace RangeMap.Records;

/// <summary>
/// Reads what was seen from the cells of a row: stage, sex, length, evidence, host, behaviour, remarks. Nothing here refuses a row;
/// what is not understood is kept as written and counted.
/// </summary>
internal sealed class SightingCells(RowCells cells)
{
    private readonly TextPool _pool = new();
    private readonly StageMemory _stages = new();
    private readonly Dictionary<Term, long> _notUnderstood = [];

    /// <summary>Cells that were not understood, by term.</summary>
    public IReadOnlyDictionary<Term, long> NotUnderstood => _notUnderstood;

    /// <summary>The cell of stages in use: the caste where it is understood or alone, else the life stage.</summary>
    private static ReadOnlySpan<char> StageText(ReadOnlySpan<char> caste, ReadOnlySpan<char> stage) =>
        caste.IsEmpty || (ControlledWords.Stages.Find(caste) is null && ControlledWords.Stages.Find(stage) is not null) ? stage : caste;

    public StageAndSex StageAndSex()
    {
        ReadOnlySpan<char> caste = cells[Term.Caste], life = cells[Term.LifeStage], sex = cells[Term.Sex];
        if (!_stages.Recall(caste, life, sex, out var understood))
        {
            var stage = StageText(caste, life);
            understood = new(Records.StageAndSex.Read(stage, sex, _pool), stage.IsEmpty || IsKnown(stage), sex.IsEmpty || IsKnown(sex));
            _stages.Keep(caste, life, sex, understood);
        }

        if (!understood.KnowsStage)
            Count(Term.LifeStage);
        if (!understood.KnowsSex)
            Count(Term.Sex);
        return understood.Read;
    }

    public double? LengthMm()
    {
        var text = cells[Term.LengthMm];
        if (text.IsEmpty)
            return null;
        var mm = LengthText.Read(text);
        if (mm is null)
            Count(Term.LengthMm);
        return mm;
    }

    public string? Evidence() => Word(Term.Evidence, ControlledWords.Evidence);

    public string? Behaviour() => Word(Term.Behaviour, ControlledWords.Behaviours);

    public string? Host() => _pool.Get(cells[Term.Host]);

    public string? Remarks() => _pool.Get(cells[Term.OccurrenceRemarks]);

    public string? Link()
    {
        var link = _pool.Get(cells[Term.EvidenceLink]);
        if (link is not null && EvidenceLink.Shown(link) is null)
            Count(Term.EvidenceLink);
        return link;
    }

    /// <summary>True when the row stands on a complete list: as its own column says, else as the words about how was looked do.</summary>
    public bool IsOnCompleteList()
    {
        var text = cells[Term.CompleteList];
        if (text.IsEmpty)
            return ListWords.IsNamedIn(cells[Term.SamplingProtocol]);
        var said = ListWords.Read(text);
        if (said is null)
            Count(Term.CompleteList);
        return said == true;
    }

    private static bool IsKnown(ReadOnlySpan<char> text) => ControlledWords.Stages.Find(text) is not null || ControlledWords.Sexes.Find(text) is not null;

    private string? Word(Term term, ControlledWords words)
    {
        var text = cells[term];
        if (text.IsEmpty)
            return null;
        if (words.Find(text) is { } word)
            return word;
        Count(term);
        return _pool.Get(text);
    }

    private void Count(Term term) => _notUnderstood[term] = _notUnderstood.GetValueOrDefault(term) + 1;
}
