using RangeMap.Maps;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Tells the size of an export beforehand. Formats pack so differently that nothing but the format itself tells how long its rows get: some are written, and the file is weighed.</summary>
internal static class EstimateSize
{
    private const int RowsWeighed = 20_000, Runs = 10;

    /// <summary>Number of rows, and about how many bytes they are in a format: exact up to 20,000 rows, within a quarter above.</summary>
    public static async Task<ExportSize> OfAsync(DataFolder folder, ExportQuestion question, ExportFormat format, CancellationToken cancel)
    {
        var (rows, atMost) = Count(folder, question);
        var scratch = Directory.CreateTempSubdirectory("rangemap-size-");
        try
        {
            var source = MakeExport.SourceOf(folder, question);
            var empty = await WeighAsync([], "empty");
            long weighed = 0;
            var some = await WeighAsync(Some(folder, question, rows).Select(Counted), "some");
            return new(rows, atMost, weighed >= rows || weighed == 0 ? some : (long)(empty + (double)(some - empty) * rows / weighed));

            async Task<long> WeighAsync(IEnumerable<ExportRow> sample, string name)
            {
                var path = Path.Combine(scratch.FullName, name);
                await TableExport.WriteAsync(path, format, question.Table, source, sample, cancel);
                return new FileInfo(path).Length;
            }

            ExportRow Counted(ExportRow row)
            {
                weighed++;
                return row;
            }
        }
        finally
        {
            scratch.Delete(recursive: true);
        }
    }

    /// <summary>Records are counted by the store, where that is quick; what else they are chosen by can only make them fewer.</summary>
    private static (long Rows, bool AtMost) Count(DataFolder folder, ExportQuestion question)
    {
        if (question.Table != ExportTables.Records)
            return (MakeExport.Rows(folder, question).LongCount(), false);
        var first = MakeExport.Rows(folder, question).Take(RowsWeighed + 1).LongCount();
        return first <= RowsWeighed ? (first, false) : (new RecordStore(folder.Database).Count(RecordRows.QueryOf(question)), RecordRows.IsChosenFurther(question));
    }

    /// <summary>Runs of rows from all over the export, long enough that neighbours are as alike as they will be in the file; of records the first, as to reach the last takes as long as the export.</summary>
    private static IEnumerable<ExportRow> Some(DataFolder folder, ExportQuestion question, long count)
    {
        var rows = MakeExport.Rows(folder, question);
        if (count <= RowsWeighed || question.Table == ExportTables.Records)
            return rows.Take(RowsWeighed);
        var step = count / Runs;
        return rows.Where((_, i) => i % step < RowsWeighed / Runs);
    }
}

/// <summary>The size of an export beforehand.</summary>
/// <param name="Rows">Number of rows.</param>
/// <param name="AtMost">True where that number is the most, because rows are chosen by more than could be counted quickly.</param>
/// <param name="Bytes">About how many bytes.</param>
internal sealed record ExportSize(long Rows, bool AtMost, long Bytes);
