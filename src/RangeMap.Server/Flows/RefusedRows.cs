using System.IO.Pipelines;
using System.Text;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Writes the refused rows of an import as a CSV file that can be mended and sent again.</summary>
internal static class RefusedRows
{
    public static void Write(DataFolder folder, StoredBatch batch, TextWriter writer)
    {
        var header = FileHeader.FromJson(batch.Header);
        var rows = new RefusalWriter(writer, header.Columns, header.Separator);
        foreach (var refusal in new BatchStore(folder.Database).Refusals(batch.Number))
            rows.Write(refusal);
    }

    /// <summary>Writes them into a pipe, and ends it; should that fail, whoever reads hears of it.</summary>
    public static async Task WriteAsync(DataFolder folder, StoredBatch batch, PipeWriter to)
    {
        Exception? failed = null;
        try
        {
            await WriteAsync(folder, batch, to.AsStream(leaveOpen: true));
        }
        catch (Exception error)
        {
            failed = error;
        }

        await to.CompleteAsync(failed);
    }

    public static async Task WriteAsync(DataFolder folder, StoredBatch batch, Stream to)
    {
        // Rows are written one by one; the buffer keeps the many small pieces from being sent each on its own.
        await using var writer = new StreamWriter(to, new UTF8Encoding(false), 1 << 14, leaveOpen: true);
        using var text = new StringWriter();
        var header = FileHeader.FromJson(batch.Header);
        var rows = new RefusalWriter(text, header.Columns, header.Separator);
        foreach (var refusal in new BatchStore(folder.Database).Refusals(batch.Number))
        {
            await FlushAsync();
            rows.Write(refusal);
        }

        await FlushAsync();

        async Task FlushAsync()
        {
            await writer.WriteAsync(text.GetStringBuilder());
            text.GetStringBuilder().Clear();
        }
    }
}
