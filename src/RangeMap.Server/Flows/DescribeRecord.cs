using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Answers all that a reviewer needs to see of a record.</summary>
internal static class DescribeRecord
{
    public static RecordDetailJson Answer(DataFolder folder, DataSnapshot data, StoredRecord record)
    {
        var history = new DecisionHistory(folder.Database).Of(record.Id);
        var words = new RecordWords(folder, data).Of(record);
        return new(
            RecordJson.Of(record, data, inFull: true), AsSent(folder, record), [.. words.Select(DoubtJson.Of)], [.. history.Select(step => StepOf(step, record))],
            MarksJson.Of(data, data.Taxon((int)record.Taxon), record.Stage));
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

    private static HistoryJson StepOf(PastDecision step, StoredRecord record) => new(
        step.DecisionSet, step.MadeAt, step.MadeBy, step.Reason, step.Status is { } status ? RecordJson.Word((ReviewStatus)status) : null, step.TaxonName, step.Reverses,
        step.Basis == record.Basis);
}
