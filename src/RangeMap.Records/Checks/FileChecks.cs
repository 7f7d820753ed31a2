namespace RangeMap.Records;

/// <summary>
/// The checks that compare a record with those before it, in its file and, once primed, in the store: duplicates, two far places
/// on one day, dates implausible for the recorder, and places that look filled in. The later record of a pair is the one in doubt.
/// </summary>
/// <remarks>
/// Holds 11 to 17 bytes a record and 23 to 34 bytes a recorder's day; one for each import. Not safe for several threads at once.
/// </remarks>
/// <param name="context">What the checks may ask.</param>
/// <param name="expectedRows">Rows to make room for at once; more still fit.</param>
public sealed class FileChecks(CheckContext context, long expectedRows = 0)
{
    /// <summary>Records between asking for memory and using it: a few times the wait for memory.</summary>
    private const int Ahead = 8;

    private readonly RecorderNames _recorders = new();
    private readonly DuplicateRecord _duplicates = new(expectedRows);
    private readonly TwoFarPlaces _places = new(context.Limits.FarPlacesKm);
    private readonly RecorderImplausible _years = new(context.Limits.RecorderYears);
    private readonly PlaceDefault? _towns = context.Town is { } town ? new(town, context.Limits.TownCentreRecords) : null;

    /// <summary>Tells of a record that the store holds; the order does not matter.</summary>
    public void Prime(in ComparedRecord record) => Compare(record);

    /// <summary>What is doubtful about a record beside those told of before; it is remembered from now on.</summary>
    public Doubts Find(Record record)
    {
        var found = Compare(ComparedRecord.Of(record));
        if (_towns is not null && record.Point is { } point)
            found |= _towns.Add(point);
        // A row that stands in its file twice has a doubt of its own for that.
        return (record.Doubts & Doubts.RepeatedRow) != 0 ? found & ~Doubts.DuplicateRecord : found;
    }

    /// <summary>Adds to records what is doubtful about them beside those told of before; those in doubt are replaced.</summary>
    public void AddTo(Span<Record> records)
    {
        for (var i = 0; i < records.Length; i++)
        {
            if (i + Ahead < records.Length)
                Expect(records[i + Ahead]);
            var found = Find(records[i]);
            if (found != Doubts.None)
                records[i] = records[i] with { Doubts = records[i].Doubts | found };
        }
    }

    /// <summary>Asks for the memory that a record will need.</summary>
    private void Expect(Record record)
    {
        var recorder = _recorders.NumberOf(record.Recorder);
        if (recorder != RecorderNames.Nobody && record.Dates.IsOneDay)
            _duplicates.Expect(ComparedRecord.Of(record), recorder);
    }

    private Doubts Compare(in ComparedRecord record)
    {
        var recorder = _recorders.NumberOf(record.Recorder);
        if (recorder == RecorderNames.Nobody)
            return Doubts.None;
        var found = _years.Add(recorder, record.Dates);
        if (!record.Dates.IsOneDay)
            return found;
        return found | _duplicates.Add(record, recorder) | _places.Add(recorder, record.Dates.First, record.SquareCode);
    }
}
