namespace RangeMap.Records;

/// <summary>What of a record is compared with others: for telling <see cref="FileChecks"/> what the store holds already.</summary>
/// <param name="Key">Identity of the record; a record is never compared with itself.</param>
/// <param name="TaxonId">The taxon.</param>
/// <param name="SquareCode">Code of its square.</param>
/// <param name="Dates">Its days.</param>
/// <param name="Recorder">Who saw it, as written.</param>
/// <param name="Stage">Stage, as kept.</param>
/// <param name="Sex">Sex, as kept.</param>
/// <param name="Present">False when it was looked for and not found.</param>
public readonly record struct ComparedRecord(UInt128 Key, string TaxonId, long SquareCode, DayRange Dates, string? Recorder, string? Stage, string? Sex, bool Present)
{
    /// <summary>What is compared of a record.</summary>
    public static ComparedRecord Of(Record record) =>
        new(record.Key, record.Taxon.Id, record.Square.Code, record.Dates, record.Recorder, record.Stage, record.Sex, record.Present);
}
