using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Answers all that a reviewer needs to see of a record.</summary>
internal static class DescribeRecord
{
    public static RecordDetailJson Answer(DataFolder folder, DataSnapshot data, StoredRecord record)
    {
        var history = new DecisionStore(folder.Database, TimeProvider.System).History(record.Id);
        return new(
            RecordJson.Of(record, data, inFull: true), AsSent(folder, record), [.. DoubtCatalogue.In(record.Doubts).Select(entry => DoubtOf(entry))],
            [.. history.Select(step => StepOf(step, record))], MarksOf(data, record));
    }

    private static Dictionary<string, string> AsSent(DataFolder folder, StoredRecord record)
    {
        var batches = new BatchStore(folder.Database);
        if (batches.Read(record.Batch) is not { } batch || batches.SourceRow(record.Batch, record.Row) is not { } row)
            return [];
        var header = FileHeader.FromJson(batch.Header);
        var cells = RowText.Split(row, header.Separator);
        return cells is null ? [] : header.Columns.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    private static DoubtJson DoubtOf(DoubtEntry entry) => new(entry.Code, entry.Title, entry.Weight, entry.Title);

    private static HistoryJson StepOf(PastDecision step, StoredRecord record) => new(
        step.DecisionSet, step.MadeAt, step.MadeBy, step.Reason, step.Status is { } status ? RecordJson.Word((ReviewStatus)status) : null, step.TaxonName, step.Reverses,
        step.Basis == record.Basis);

    private static MarksJson? MarksOf(DataSnapshot data, StoredRecord record) => null;
}
