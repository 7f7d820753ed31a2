namespace RangeMap.Records;

/// <summary>
/// A stated stage that is not about on any possible day, while another stage of the taxon is: then the stage may be
/// wrong rather than the date or the name. It comes beside the doubt of <see cref="OutOfSeason"/>.
/// </summary>
internal sealed class StageAgainstDate(OutOfSeason season) : RecordCheck
{
    public override Doubts Doubt => Doubts.StageAgainstDate;

    public override bool Finds(Record record) => season.Finds(record) && season.OthersAreAbout(record);

    public override string? Explain(Record record)
    {
        if (!Finds(record))
            return null;
        var stage = StageKind.KeyOf(record.Stage, record.Sex);
        return $"{Capital(StagePhrase.Plural(stage))} are not about in that week, and {StagePhrase.Joined([.. OthersAbout(record)])} are.";
    }

    private IEnumerable<string> OthersAbout(Record record)
    {
        var weeks = season.WeeksOf(record);
        return record.Taxon.Marks.Season.Entries.Where(e => e.Value.Meets(weeks)).Select(e => StagePhrase.Plural(e.Stage));
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
