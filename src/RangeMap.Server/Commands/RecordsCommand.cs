using System.CommandLine;
using System.Globalization;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary><c>rangemap records</c>: lists records, or the review queue, gravest doubts first.</summary>
internal static class RecordsCommand
{
    private static readonly Option<string?> Taxon = new("--taxon") { Description = "Identifier or scientific name; an aggregate with its members.", HelpName = "TAXON" };
    private static readonly Option<string?> Dataset = new("--dataset") { Description = "Data set.", HelpName = "ID" };
    private static readonly Option<long?> Batch = new("--batch") { Description = "Number of the import.", HelpName = "BATCH" };
    private static readonly Option<string?> Status = new("--status") { Description = "unreviewed, confirmed, doubtful or rejected.", HelpName = "STATUS" };
    private static readonly Option<string?> Doubt = new("--doubt") { Description = "Codes of doubts with commas between; records with any of them.", HelpName = "CODES" };
    private static readonly Option<string?> Recorder = new("--recorder") { Description = "The recorder's name as records have it.", HelpName = "NAME" };
    private static readonly Option<string?> Square = new("--square") { Description = "Square that wholly holds the record's own.", HelpName = "REF" };
    private static readonly Option<bool> Queue = new("--queue") { Description = "The review queue: unreviewed records with doubts, the gravest first." };
    private static readonly Option<int> Limit = new("--limit") { Description = "How many at most.", HelpName = "N", DefaultValueFactory = _ => 50 };

    public static Command Make(CommandContext context)
    {
        var command = new Command("records", "List records, or the review queue.") { Taxon, Dataset, Batch, Status, Doubt, Recorder, Square, Queue, Limit, CommonOptions.Data, CommonOptions.Json };
        command.SetAction(parsed =>
        {
            var folder = DataFolder.OpenExisting(parsed.GetRequiredValue(CommonOptions.Data));
            var data = new CurrentData(folder.Database, context.Clock).Now();
            var (store, query) = (new RecordStore(folder.Database), QueryOf(parsed, data));
            var page = parsed.GetValue(Queue) ? store.Queue(query, doubts => DoubtCatalogue.WeightOf(doubts)) : store.Find(query);
            var words = new RecordWords(folder, data);
            foreach (var record in page.Records)
            {
                if (parsed.GetValue(CommonOptions.Json))
                    context.WriteJson(RecordJson.Of(record, data, inFull: true));
                else
                    Write(context.Out, data, record, words.Of(record));
            }

            if (page.Records.Count == 0 && !parsed.GetValue(CommonOptions.Json))
                context.Out.WriteLine(parsed.GetValue(Queue) ? "Nothing waits for a reviewer." : "There are no such records.");
        });
        return command;
    }

    private static RecordQuery QueryOf(ParseResult parsed, DataSnapshot data) => new()
    {
        Taxa = parsed.GetValue(Taxon) is { } taxon ? [.. data.WithMembers(data.Find(taxon)).Select(found => found.Number)] : null,
        Dataset = parsed.GetValue(Dataset),
        Batch = parsed.GetValue(Batch),
        Status = RecordAsk.Status(parsed.GetValue(Status), "--status"),
        Doubts = RecordAsk.Doubts(parsed.GetValue(Doubt)),
        Recorder = parsed.GetValue(Recorder),
        Within = parsed.GetValue(Square) is { } square ? Ask.Square(square) : null,
        Limit = Math.Clamp(parsed.GetValue(Limit), 1, 1_000_000),
    };

    private static void Write(TextWriter to, DataSnapshot data, StoredRecord record, IReadOnlyList<DoubtWords> doubts)
    {
        var days = record.Dates.IsOneDay ? Day(record.Dates.First) : $"{Day(record.Dates.First)} to {Day(record.Dates.Last)}";
        var recorder = record.Recorder is { } name ? $", {name}" : "";
        to.WriteLine($"{record.Id}  {data.Taxon((int)record.Taxon).ScientificName}, {record.Square}, {days}{recorder}  [{RecordJson.Word(record.ReviewStatus)}]");
        foreach (var doubt in doubts)
            to.WriteLine($"    {doubt.What}");
    }

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
