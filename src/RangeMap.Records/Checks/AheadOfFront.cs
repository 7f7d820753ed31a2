using System.Globalization;

namespace RangeMap.Records;

/// <summary>A record of an arriving species from further out than the line that 99 in 100 arrivals are expected to stay behind by the record's last possible day.</summary>
internal sealed class AheadOfFront(KmAheadOfFront front) : RecordCheck
{
    public override Doubts Doubt => Doubts.AheadOfFront;

    public override bool Finds(Record record) => record.Present && front(record.Taxon, record.Square, record.Dates.Last) > 0;

    public override string? Explain(Record record) => record.Present && front(record.Taxon, record.Square, record.Dates.Last) is > 0 and var km
        ? string.Create(CultureInfo.InvariantCulture, $"{record.Square} lies {km:0.#} km ahead of the line that 99 in 100 arrivals of {record.Taxon.ScientificName} were expected to stay behind on {DayWords.Of(DayRange.Day(record.Dates.Last))}.")
        : null;
}
