using RangeMap.Maps;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Makes exports: tells their size beforehand, and writes them to files.</summary>
internal static class MakeExport
{
    private const int RowsLookedAt = 1_000;

    /// <summary>Number of rows, and about how many bytes they are in a format.</summary>
    public static ExportSize Size(DataFolder folder, ExportQuestion question, ExportFormat format)
    {
        var sample = new List<long>();
        using var bytes = new CountingStream();
        CsvExport.WriteAsync(bytes, question.Table, Rows(folder, question).Take(RowsLookedAt).Select(row => Counted(row, sample))).GetAwaiter().GetResult();
        var aRow = sample.Count == 0 ? 0 : (double)bytes.Length / sample.Count;
        var (rows, atMost) = CountOf(folder, question, sample.Count);
        return new(rows, atMost, (long)(rows * aRow * Share(format)));
    }

    /// <summary>Writes an export to a new file.</summary>
    /// <exception cref="EditionPassedException">The data changed meanwhile; what was written is half of each state, and must go.</exception>
    public static async Task WriteAsync(DataFolder folder, ExportQuestion question, ExportFormat format, string path, Action<long>? progress, CancellationToken cancel)
    {
        var source = SourceOf(folder, question);
        await TableExport.WriteAsync(path, format, question.Table, source, Watched(Rows(folder, question), progress, cancel), cancel);
        if (question.Data.FrozenId is null && new Store.Editions(folder.Database).Current().Number != question.Data.Edition.Number)
            throw new EditionPassedException();
    }

    /// <summary>Where the rows of a question come from.</summary>
    public static ExportSource SourceOf(DataFolder folder, ExportQuestion question)
    {
        var data = question.Data;
        if (data.FrozenId is { } id)
        {
            var edition = new FrozenEditions(folder.Path).Find(id);
            return new(edition.Title, id, IsFrozen: true, edition.FrozenAt, edition.Citation, edition.Licences, question.Words());
        }

        var title = new Settings(folder.Database).Read(SettingNames.Title) ?? "RangeMap";
        return new(title, data.StateName, IsFrozen: false, data.Edition.MadeAt, CitationText.OfLive(title, data.Edition.Number, data.Edition.MadeAt), LicenceMix.Of(folder.Database), question.Words());
    }

    private static IEnumerable<ExportRow> Rows(DataFolder folder, ExportQuestion question)
    {
        if (question.Table == ExportTables.Records)
            return RecordRows.Of(folder, question);
        return question.Table == ExportTables.Effort ? ExportRows.Effort(folder, question) : ExportRows.Presence(folder, question);
    }

    private static (long Rows, bool AtMost) CountOf(DataFolder folder, ExportQuestion question, int looked)
    {
        if (looked < RowsLookedAt)
            return (looked, false);
        return question.Table == ExportTables.Records
            ? (new RecordStore(folder.Database).Count(RecordRows.QueryOf(question)), RecordRows.IsChosenFurther(question))
            : (Rows(folder, question).LongCount(), false);
    }

    private static ExportRow Counted(ExportRow row, List<long> sample)
    {
        sample.Add(row.Square.Code);
        return row;
    }

    private static IEnumerable<ExportRow> Watched(IEnumerable<ExportRow> rows, Action<long>? progress, CancellationToken cancel)
    {
        const int Every = 10_000;
        long count = 0;
        foreach (var row in rows)
        {
            if (++count % Every == 0)
            {
                cancel.ThrowIfCancellationRequested();
                progress?.Invoke(count);
            }

            yield return row;
        }
    }

    /// <summary>Bytes of a row beside those of CSV, as measured on the demo.</summary>
    private static double Share(ExportFormat format) => format switch
    {
        ExportFormat.GeoJson => 6,
        ExportFormat.GeoPackage => 3,
        ExportFormat.Parquet => 0.15,
        ExportFormat.DarwinCoreArchive => 0.2,
        _ => 1,
    };
}

/// <summary>The size of an export beforehand.</summary>
/// <param name="Rows">Number of rows.</param>
/// <param name="AtMost">True where that number is the most, because rows are chosen by more than could be counted quickly.</param>
/// <param name="Bytes">About how many bytes.</param>
internal sealed record ExportSize(long Rows, bool AtMost, long Bytes);

/// <summary>Counts what is written to it and keeps nothing.</summary>
internal sealed class CountingStream : Stream
{
    private long _length;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => _length;

    public override long Position { get => _length; set => throw new NotSupportedException(); }

    public override void Flush()
    {
    }

    public override void Write(byte[] buffer, int offset, int count) => _length += count;

    public override void Write(ReadOnlySpan<byte> buffer) => _length += buffer.Length;

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
