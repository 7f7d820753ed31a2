using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Records: the public reads those of species that are not sensitive, without people and doubts; reviewers read all and decide.</summary>
internal static class RecordEndpoints
{
    private const int MostRecords = 1_000;

    public static void MapRecords(this RouteGroupBuilder api)
    {
        var records = api.MapGroup("/records").WithTags("Records");
        records.MapGet("", List).WithSummary("Records by taxon, data set, import, square, day, recorder, status or doubt; order=weight gives the review queue, gravest doubts first.");
        records.MapGet("/{id}", One).WithSummary("One record with its row as it was sent, its doubts in words, its history and how to tell its taxon from others.");
    }

    private static RecordListJson List(
        HttpContext http, AccessRules rules, DataFolder folder, CurrentData current, string? taxon = null, string? dataset = null, long? batch = null, string? status = null,
        string? doubt = null, string? recorder = null, string? from = null, string? to = null, string? square = null, string? order = null, int limit = 100, string? after = null)
    {
        var (data, caller) = (current.Now(), rules.CallerOf(http));
        var sensitive = data.Taxa.Where(found => found.GeneraliseTo is not null).Select(found => found.Number).ToList();
        var inFull = caller.May(Right.Review);
        var byWeight = ByWeight(order);
        if (!inFull && (byWeight || !string.IsNullOrEmpty(doubt) || !string.IsNullOrEmpty(recorder)))
            rules.Require(http, Right.Review);
        var query = new RecordQuery
        {
            Dataset = NullIfEmpty(dataset),
            Batch = batch,
            Taxa = string.IsNullOrEmpty(taxon) ? null : [.. data.WithMembers(data.Find(taxon)).Select(found => found.Number)],
            WithoutTaxa = inFull || sensitive.Count == 0 ? null : sensitive,
            Status = RecordAsk.Status(status, "status"),
            Doubts = RecordAsk.Doubts(doubt),
            Recorder = NullIfEmpty(recorder),
            From = RecordAsk.Day(from, "from"),
            To = RecordAsk.Day(to, "to"),
            Within = string.IsNullOrEmpty(square) ? null : Ask.Square(square),
            Limit = Math.Clamp(limit, 1, MostRecords),
            After = NullIfEmpty(after),
        };
        var store = new RecordStore(folder.Database);
        var page = RecordAsk.Page(() => byWeight ? store.Queue(query, doubts => DoubtCatalogue.WeightOf(doubts)) : store.Find(query));
        var note = query.WithoutTaxa is null ? null : "Records of sensitive species are left out; reviewers see them.";
        return new([.. page.Records.Select(record => Shown(RecordJson.Of(record, data, inFull), inFull))], page.Next, note);
    }

    private static RecordDetailJson One(HttpContext http, AccessRules rules, DataFolder folder, CurrentData current, string id)
    {
        var (data, inFull) = (current.Now(), rules.CallerOf(http).May(Right.Review));
        var record = RecordId.TryParse(id, out var name) ? new RecordStore(folder.Database).Read(name) : null;
        if (record is null || (!inFull && data.Taxon((int)record.Taxon).GeneraliseTo is not null))
            throw RecordAsk.Unknown(id);
        var detail = DescribeRecord.Answer(folder, data, record);
        return inFull ? detail : detail with { Record = Shown(RecordJson.Of(record, data, inFull: false), inFull: false), Sent = new Dictionary<string, string>(), Doubts = [], History = [] };
    }

    /// <summary>Doubts are not for the public: one may follow from a sensitive record of the same recorder and day.</summary>
    private static RecordJson Shown(RecordJson record, bool inFull) => inFull ? record : record with { Doubts = [], Weight = 0 };

    private static bool ByWeight(string? order) => order?.ToUpperInvariant() switch
    {
        null or "" or "ARRIVAL" => false,
        "WEIGHT" => true,
        _ => throw new UserException($"'{order}' is no order of records.", "order", "Use arrival, or weight for the review queue."),
    };

    private static string? NullIfEmpty(string? text) => string.IsNullOrEmpty(text) ? null : text;
}
