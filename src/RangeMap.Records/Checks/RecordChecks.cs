namespace RangeMap.Records;

/// <summary>
/// All checks that need nothing but the record and what the context answers. Make one for each import; not safe for several
/// threads at once.
/// </summary>
public sealed class RecordChecks
{
    private readonly RecordCheck[] _ofList;
    private readonly RecordCheck[] _ofPlace;

    /// <summary>Sets the checks up; those whose answers the context lacks are left out.</summary>
    public RecordChecks(CheckContext context)
    {
        var season = new OutOfSeason(context.Limits);
        _ofList =
        [
            new BeforeFirstYear(), season, new StageAgainstDate(season), new LengthOutOfRange(context.Limits), new StageImpossible(),
            new EvidenceMissing(context.Taxa), new DateDefault(),
        ];
        _ofPlace =
        [
            .. context.Sea is { } sea ? [new AtSea(sea, context.HasNoSea)] : (RecordCheck[])[],
            .. context.Areas is not null || context.IslandOf is not null ? [new OutsideKnownArea(context)] : (RecordCheck[])[],
            .. context.Front is { } front ? [new AheadOfFront(front)] : (RecordCheck[])[],
        ];
    }

    /// <summary>Every check.</summary>
    public IEnumerable<RecordCheck> All => _ofList.Concat(_ofPlace);

    /// <summary>What is doubtful about a record by the taxon list and the record itself alone.</summary>
    public Doubts FindByList(Record record) => Find(_ofList, record);

    /// <summary>What is doubtful about the place of a record, by coast, regions and fronts.</summary>
    public Doubts FindByPlace(Record record) => Find(_ofPlace, record);

    private static Doubts Find(RecordCheck[] checks, Record record)
    {
        var found = Doubts.None;
        foreach (var check in checks)
        {
            if (check.Finds(record))
                found |= check.Doubt;
        }

        return found;
    }
}
