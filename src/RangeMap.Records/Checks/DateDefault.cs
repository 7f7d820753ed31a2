namespace RangeMap.Records;

/// <summary>
/// A day that programs fill in where only the year, or nothing, was known: 1 January of any year, and 30 and 31 December 1899,
/// which are the days 0 and 1 of spreadsheets.
/// </summary>
internal sealed class DateDefault : RecordCheck
{
    public override Doubts Doubt => Doubts.DateDefault;

    public override bool Finds(Record record) =>
        record.Dates.IsOneDay && (record.Dates.First is { Month: 1, Day: 1 } || record.Dates.First is { Year: 1899, Month: 12, Day: >= 30 });

    public override string? Explain(Record record) => Finds(record)
        ? $"The date is {DayWords.Of(record.Dates)}, which many programs fill in where the day was not known."
        : null;
}
