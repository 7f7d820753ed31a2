namespace RangeMap.Records;

/// <summary>Says what is doubtful about a record, with the particulars of that record.</summary>
public interface IDoubtParticulars
{
    /// <summary>The doubt that it speaks of.</summary>
    Doubts Doubt { get; }

    /// <summary>A sentence or two for the recorder; null when the particulars cannot be had, or the record gives no cause any more.</summary>
    string? Explain(Record record);
}

/// <summary>
/// One check of a record by itself. It is made once for an import and is not used by several threads at once, so it may
/// remember what it looked up.
/// </summary>
/// <remarks>A class, since a call through an interface that ten classes implement costs as much as most checks.</remarks>
public abstract class RecordCheck : IDoubtParticulars
{
    /// <inheritdoc/>
    public abstract Doubts Doubt { get; }

    /// <summary>True when the record is in doubt. Runs on each row: no allocation where nothing is found.</summary>
    public abstract bool Finds(Record record);

    /// <inheritdoc/>
    public abstract string? Explain(Record record);
}
