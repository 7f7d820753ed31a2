namespace RangeMap.Records;

/// <summary>A record dated before the taxon was first known from the country: every possible day lies before that year.</summary>
internal sealed class BeforeFirstYear : RecordCheck
{
    public override Doubts Doubt => Doubts.BeforeFirstYear;

    public override bool Finds(Record record) => record.Present && record.Dates.Last.Year < record.Taxon.FirstYear;

    public override string? Explain(Record record) => Finds(record)
        ? $"{record.Taxon.ScientificName} is known from {record.Taxon.FirstYear} on, and the record is dated {DayWords.Of(record.Dates)}."
        : null;
}
