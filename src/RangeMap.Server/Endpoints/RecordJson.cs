using System.Globalization;
using System.Text.Json;
using RangeMap.Grids;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>A record as the interface tells it.</summary>
internal sealed record RecordJson(
    string Id, string Version, string Dataset, long Batch, long Row, string Taxon, string ScientificName, string? SentTaxon, string Square, string Grid, string Size,
    double Latitude, double Longitude, double? UncertaintyMetres, string First, string Last, bool Present,
    [property: Words("unreviewed", "confirmed", "doubtful", "rejected")] string Status, [property: Words("unreviewed", "confirmed", "doubtful", "rejected")] string? SentStatus,
    IReadOnlyList<string> Doubts, int Weight, string? Recorder, string? Determiner, string? Stage, string? Sex, long? Count, double? LengthMm, string? Evidence,
    string? Host, string? Behaviour, string? Site, bool OnCompleteList)
{
    /// <summary>Makes it.</summary>
    /// <param name="record">The record.</param>
    /// <param name="data">Names its taxon.</param>
    /// <param name="inFull">With the people and the site; the public does without.</param>
    public static RecordJson Of(StoredRecord record, DataSnapshot data, bool inFull)
    {
        var grid = NationalGrid.Get(record.Square.Grid);
        var centre = record is { Latitude: { } latitude, Longitude: { } longitude } ? new LatLon(latitude, longitude) : grid.ToLatLon(record.Square.Centre);
        var taxon = data.Taxon((int)record.Taxon);
        return new(
            record.Id.ToString(), VersionText(record.Version), record.Dataset, record.Batch, record.Row, taxon.Id, taxon.ScientificName,
            record.SentTaxon is { } sent ? data.NameOf((int)sent) : null, record.Square.ToString(), grid.Code, record.Square.Size.ToText(),
            Math.Round(centre.Latitude, 6), Math.Round(centre.Longitude, 6), record.Uncertainty, Day(record.Dates.First), Day(record.Dates.Last), record.Present,
            Word(record.ReviewStatus), record.SentStatus is { } status ? Word((ReviewStatus)status) : null,
            [.. DoubtCatalogue.In(record.Doubts).Select(entry => entry.Code)], DoubtCatalogue.WeightOf(record.Doubts), inFull ? record.Recorder : null,
            inFull ? record.Determiner : null, record.Stage, record.Sex, record.Individuals, record.LengthMm, record.Evidence, record.Host, record.Behaviour,
            inFull ? record.Site : null, record.OnCompleteList);
    }

    /// <summary>The text of a version.</summary>
    public static string VersionText(long version) => version.ToString("x16", CultureInfo.InvariantCulture);

    /// <summary>The word for where a review stands.</summary>
    public static string Word(ReviewStatus status) => JsonNamingPolicy.CamelCase.ConvertName(status.ToString());

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>A page of records.</summary>
/// <param name="Records">The records.</param>
/// <param name="Next">Ask with after= this to read on; null at the end.</param>
/// <param name="Note">What is left out, and why.</param>
internal sealed record RecordListJson(IReadOnlyList<RecordJson> Records, string? Next, string? Note);

/// <summary>A record with all that a reviewer needs to see.</summary>
/// <param name="Record">The record.</param>
/// <param name="Sent">The row as it was sent, by column.</param>
/// <param name="Doubts">Its doubts in words, the heaviest first.</param>
/// <param name="History">What was decided on it, oldest first.</param>
/// <param name="Marks">What tells the taxon from those that it is confused with.</param>
internal sealed record RecordDetailJson(
    RecordJson Record, IReadOnlyDictionary<string, string> Sent, IReadOnlyList<DoubtJson> Doubts, IReadOnlyList<HistoryJson> History, MarksJson? Marks);

/// <summary>A doubt in words.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Title">A few words.</param>
/// <param name="Weight">How much it counts in the order of the queue.</param>
/// <param name="Words">What was noticed.</param>
/// <param name="Why">Why it is asked.</param>
/// <param name="Help">What would help.</param>
internal sealed record DoubtJson(string Code, string Title, int Weight, string Words, string Why, string Help)
{
    public static DoubtJson Of(DoubtWords words)
    {
        var entry = DoubtCatalogue.Of(words.Doubt);
        return new(entry.Code, entry.Title, entry.Weight, words.What, words.Why, words.Help);
    }
}

/// <summary>A step of a record's history.</summary>
/// <param name="Decision">Number by which it can be taken back.</param>
/// <param name="At">When, ISO 8601 in UTC.</param>
/// <param name="By">Who.</param>
/// <param name="Reason">Why.</param>
/// <param name="Status">Status from then on; null for the one that was sent.</param>
/// <param name="Taxon">Name of the taxon from then on; null for the one that was sent.</param>
/// <param name="Reverses">The decision that this one took back.</param>
/// <param name="Holds">False where the record said something else at that time.</param>
internal sealed record HistoryJson(long Decision, string At, string By, string Reason, [property: Words("unreviewed", "confirmed", "doubtful", "rejected")] string? Status, string? Taxon, long? Reverses, bool Holds);

