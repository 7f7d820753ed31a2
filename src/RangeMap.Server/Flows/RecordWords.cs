using RangeMap.Grids;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Puts the doubts of stored records into words with their particulars.</summary>
internal sealed class RecordWords
{
    private const int MostOthers = 200;
    private readonly DataSnapshot _data;
    private readonly RecordStore _records;
    private readonly DoubtExplanations _explanations;

    public RecordWords(DataFolder folder, DataSnapshot data)
    {
        _data = data;
        _records = new(folder.Database);
        _explanations = new(ImportContext.ChecksOf(folder, data.List, () => data) with { OthersOfDay = OthersOfDay });
    }

    /// <summary>The words for each doubt of a record, the heaviest first.</summary>
    public IReadOnlyList<DoubtWords> Of(StoredRecord record) => record.Doubts == Doubts.None ? [] : _explanations.Of(AsRecord(record));

    private IEnumerable<Record> OthersOfDay(Record record)
    {
        if (record.Recorder is null)
            return [];
        var page = _records.Find(new() { Recorder = record.Recorder, From = record.Dates.First, To = record.Dates.Last, Limit = MostOthers });
        return page.Records.Where(other => other.Id.Key != record.Key).Select(AsRecord);
    }

    private Record AsRecord(StoredRecord stored) => new()
    {
        Row = stored.Row,
        Key = stored.Id.Key,
        Content = 0,
        Taxon = _data.Taxon((int)stored.Taxon),
        Square = stored.Square,
        Dates = stored.Dates,
        Present = stored.Present,
        Status = stored.ReviewStatus,
        Doubts = stored.Doubts,
        Recorder = stored.Recorder,
        Determiner = stored.Determiner,
        Stage = stored.Stage,
        Sex = stored.Sex,
        LengthMm = stored.LengthMm,
        Evidence = stored.Evidence,
        Host = stored.Host,
        Behaviour = stored.Behaviour,
        Count = (int?)stored.Individuals,
        Site = stored.Site,
        Point = stored is { Latitude: { } latitude, Longitude: { } longitude } ? new LatLon(latitude, longitude) : null,
        UncertaintyMetres = stored.Uncertainty,
    };
}
