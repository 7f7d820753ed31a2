namespace RangeMap.Records;

/// <summary>
/// A day that programs fill in where only the year, or nothing, was known: 1 January of any year, and 30 and 31 December 1899,
/// which are the days 0 and 1 of spreadsheets.
/// </summary>
internal sealed class DateDefault : RecordCheck
{
    private static readonly DateOnly DayZero = new(1899, 12, 30);

    public override Doubts Doubt => Doubts.DateDefault;

    public override bool Finds(Record record) =>
        record.Dates.IsOneDay && (record.Dates.First.DayOfYear == 1 || record.Dates.First == DayZero || record.Dates.First == DayZero.AddDays(1));

    public override string? Explain(Record record) => Finds(record)
        ? $"The date is {DayWords.Of(record.Dates)}, which many programs fill in where the day was not known."
        : null;
}
