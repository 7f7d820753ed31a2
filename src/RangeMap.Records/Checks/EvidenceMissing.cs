namespace RangeMap.Records;

/// <summary>
/// A taxon that is mistaken for others, without the evidence that the list asks for at the record's stage; where the stage is not
/// stated, without evidence that suffices for every stage.
/// </summary>
internal sealed class EvidenceMissing(TaxonList taxa) : RecordCheck
{
    public override Doubts Doubt => Doubts.EvidenceMissing;

    public override bool Finds(Record record)
    {
        var marks = record.Taxon.Marks;
        if (marks.Evidence.IsEmpty || !record.Present || marks.ConfusedWith.Count == 0)
            return false;
        var key = StageKind.KeyOf(record.Stage, record.Sex);
        var fit = marks.Evidence.BestFit(key);
        foreach (ref readonly var entry in marks.Evidence.Span)
        {
            if (fit != StageFit.None && StageKind.Fit(entry.Stage, key) == fit && entry.Value.Kinds.Count > 0 && !entry.Value.IsMetBy(record.Evidence))
                return true;
        }

        return false;
    }

    public override string? Explain(Record record)
    {
        if (!Finds(record))
            return null;
        var marks = record.Taxon.Marks;
        var others = marks.ConfusedWith.Select(id => taxa.FindById(id)?.ScientificName ?? id);
        var asked = marks.Evidence.For(record.Stage, record.Sex).Where(e => e.Value.Kinds.Count > 0)
            .Select(e => e.Stage is null ? e.Value.Text : $"for {StagePhrase.Plural(e.Stage)} {e.Value.Text}");
        var stated = record.Evidence is { } evidence ? $"states \"{evidence}\"" : "states none";
        var aggregate = record.Taxon.AggregateId is { } id && taxa.FindById(id) is { } found ? $" Without it the record belongs to {Sentence.Ended(found.ScientificName)}" : "";
        return $"{record.Taxon.ScientificName} is easily taken for {Sentence.Ended(StagePhrase.Joined([.. others]))} "
            + $"The list asks for evidence: {Sentence.Ended(string.Join("; ", asked))} The record {stated}.{aggregate}";
    }
}
