using RangeMap.Presence;
using RangeMap.Records;

namespace RangeMap.Store;

/// <summary>A row of the table of records.</summary>
internal sealed record RecordRow
{
    public long Id { get; init; }

    public long Dataset { get; init; }

    public long KeyHigh { get; init; }

    public long KeyLow { get; init; }

    public long Taxon { get; init; }

    public long Square { get; init; }

    public long FirstDay { get; init; }

    public long LastDay { get; init; }

    public long Present { get; init; }

    public long Status { get; init; }

    public long Doubts { get; init; }

    public long? Recorder { get; init; }

    public long Content { get; init; }

    /// <summary>The file's taxon, where a decision says otherwise.</summary>
    public long? SentTaxon { get; init; }

    /// <summary>The file's status, where a decision says otherwise.</summary>
    public long? SentStatus { get; init; }

    public long CompleteList { get; init; }

    public RecordId Identity => RecordId.Of(Dataset, KeyHigh, KeyLow);

    /// <summary>Changes whenever the file says something else of the record, or somebody decides on it.</summary>
    public long Version => RecordVersion.Of(Content, Taxon, Status);

    public RecordRow With(Standing standing) => this with
    {
        Taxon = standing.Taxon,
        Status = standing.Status,
        Doubts = standing.Doubts,
        SentTaxon = standing.SentTaxon,
        SentStatus = standing.SentStatus,
    };

    public bool TryCell(out CubeCell cell)
    {
        var status = (ReviewStatus)Status;
        cell = new(Square, (int)FirstDay, (int)LastDay, CubeFold.Count(status, (Doubts)Doubts));
        return Present != 0 && status != ReviewStatus.Rejected;
    }

    public bool TryVisit(out VisitEntry entry)
    {
        entry = new(Square, (int)FirstDay, (int)(Recorder ?? 0), (int)Taxon, Present != 0, 1, CompleteList != 0);
        return FirstDay == LastDay && (ReviewStatus)Status != ReviewStatus.Rejected;
    }
}
