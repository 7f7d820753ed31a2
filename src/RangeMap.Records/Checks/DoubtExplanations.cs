namespace RangeMap.Records;

/// <summary>Puts the doubts of records into words, each with the particulars of that record, from the record and the context alone.</summary>
public sealed class DoubtExplanations
{
    private readonly Dictionary<Doubts, IDoubtParticulars> _particulars;

    /// <summary>Sets it up; where the context lacks an answer, the words stay general.</summary>
    public DoubtExplanations(CheckContext context) => _particulars = new RecordChecks(context).All
        .Concat<IDoubtParticulars>([new PlacesDisagree(), new FarPlaceWords(context), new DuplicateWords(context), new TownCentreWords(context)])
        .ToDictionary(p => p.Doubt);

    /// <summary>The words for each doubt of a record, the heaviest first.</summary>
    public IReadOnlyList<DoubtWords> Of(Record record) => [.. DoubtCatalogue.In(record.Doubts).Select(entry => Of(record, entry.Doubt))];

    private DoubtWords Of(Record record, Doubts doubt)
    {
        var general = DoubtSentences.Of(doubt);
        var particular = _particulars.TryGetValue(doubt, out var words) ? words.Explain(record) : null;
        return particular is null ? general : general with { What = particular };
    }
}
