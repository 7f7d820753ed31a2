using System.Security.Cryptography;
using System.Text;
using System.Threading.Channels;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Imports one file: one task reads rows into records, another keeps them, all in one transaction.</summary>
public static class ImportFile
{
#if DEBUG
    // Small, so that every test crosses the seams between chunks.
    private const int RowsPerChunk = 3;
#else
    private const int RowsPerChunk = 2_000;
#endif
    private const int ChunksWaiting = 8;

    /// <summary>Imports a file, or with <see cref="ImportRequest.DryRun"/> only tells what importing it would do.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="request">The file and what is said about it.</param>
    /// <param name="clock">Tells today and the time of the import.</param>
    /// <param name="progress">Hears of the rows read so far.</param>
    /// <param name="cancel">Stops the import; nothing of it is then kept.</param>
    /// <exception cref="UserException">The file as a whole cannot be imported; nothing of it was kept.</exception>
    public static async Task<ImportAnswer> RunAsync(
        DataFolder folder, ImportRequest request, TimeProvider clock, IProgress<ImportProgress>? progress = null, CancellationToken cancel = default)
    {
        var (started, began) = (clock.GetTimestamp(), clock.GetUtcNow());
        await using var file = Open(request.Path);
        var hash = Convert.ToHexStringLower(await SHA256.HashDataAsync(file, cancel));
        file.Position = 0;
        var taxa = new TaxonStore(folder.Database, clock);
        try
        {
            var options = request.Options(DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
            var reader = RecordReader.Open(file, taxa.Read(), options);
            using var session = ImportSession.Begin(folder.Database, request.Dataset, request.FileName ?? Path.GetFileName(request.Path), clock);
            await Task.Run(() => PassAsync(reader, session, new Pace(file, clock, progress), cancel), cancel);
            var mapping = reader.Mapping.Report;
            var figures = request.DryRun
                ? session.Figures()
                : session.Commit(hash, new FileHeader(reader.Mapping.Columns, reader.Separator).ToJson(), mapping, new()
                {
                    MadeBy = request.By,
                    Began = began,
                    Form = $"{SeparatorWords(reader.Separator)}-separated text, {reader.Encoding}",
                    Stated = request.StatedJson(),
                });
            return new(request, figures, mapping, clock.GetElapsedTime(started));
        }
        catch (ImportProblemException stopped)
        {
            throw new UserException(stopped.Problem.What, $"{request.FileName ?? request.Path}, {stopped.Problem.Where}", stopped.Problem.Mend);
        }
    }

    private static async Task PassAsync(RecordReader reader, ImportSession session, Pace pace, CancellationToken cancel)
    {
        var chunks = Channel.CreateBounded<RowChunk>(new BoundedChannelOptions(ChunksWaiting) { SingleReader = true, SingleWriter = true });
        using var either = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        var reading = ReadAsync(reader, chunks.Writer, pace, either.Token);
        try
        {
            await foreach (var chunk in chunks.Reader.ReadAllAsync(either.Token))
            {
                foreach (var record in chunk.Records)
                    session.Keep(record);
                foreach (var refusal in chunk.Refusals)
                    session.Refuse(refusal);
                session.KeepSource(chunk.Source);
                pace.Report(chunk);
            }
        }
        finally
        {
            // Should keeping have failed, reading must not wait for room for ever.
            await either.CancelAsync();
            await reading.ContinueWith(_ => { }, CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
        }

        await reading;
    }

    private static async Task ReadAsync(RecordReader reader, ChannelWriter<RowChunk> chunks, Pace pace, CancellationToken cancel)
    {
        try
        {
            var raw = new StringBuilder();
            while (ReadChunk(reader, raw) is { } chunk)
                await chunks.WriteAsync(chunk with { ReadUpTo = pace.Fraction }, cancel);
            chunks.Complete();
        }
        catch (Exception error)
        {
            chunks.Complete(error);
            throw;
        }
    }

    private static RowChunk? ReadChunk(RecordReader reader, StringBuilder raw)
    {
        var records = new List<Record>(RowsPerChunk);
        var refusals = new List<Refusal>();
        var first = reader.Row + 1;
        raw.Clear();
        for (var count = 0; count < RowsPerChunk && reader.Read(); count++)
        {
            SourceBlock.Append(raw, reader.RawText);
            if (reader.Record is { } record)
                records.Add(record);
            else
                refusals.Add(reader.Refusal!);
        }

        var rows = records.Count + refusals.Count;
        return rows == 0 ? null : new(records, refusals, SourceBlock.Pack(first, rows, raw));
    }

    private static FileStream Open(string path)
    {
        FileStream file;
        try
        {
            file = new(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan | FileOptions.Asynchronous);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new UserException($"The file cannot be read: {error.Message}", path, "Check its name and that you may read it.");
        }

        if (file.CanSeek)
            return file;
        file.Dispose();
        throw new UserException("This is a pipe or device, which cannot be read twice.", path, "Save the table as a file and import that.");
    }

    private static string SeparatorWords(char separator) => separator switch
    {
        ',' => "comma",
        ';' => "semicolon",
        '\t' => "tab",
        '|' => "bar",
        _ => $"'{separator}'",
    };

    private sealed record RowChunk(List<Record> Records, List<Refusal> Refusals, SourceBlock Source)
    {
        /// <summary>Share of the file that was read when the chunk was made.</summary>
        public double ReadUpTo { get; init; }
    }

    /// <summary>Tells how far the import has come.</summary>
    private sealed class Pace(FileStream file, TimeProvider clock, IProgress<ImportProgress>? progress)
    {
        private readonly long _started = clock.GetTimestamp();
        private readonly long _length = Math.Max(1, file.Length);

        /// <summary>Only the task that reads the file may ask.</summary>
        public double Fraction => Math.Min(1, file.Position / (double)_length);

        public void Report(RowChunk chunk) =>
            progress?.Report(ImportProgress.Of(chunk.Source.FirstRow + chunk.Source.Count - 1, chunk.ReadUpTo, clock.GetElapsedTime(_started)));
    }
}

/// <summary>A file to import.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Dataset">The data set that its records belong to.</param>
public sealed record ImportRequest(string Path, string Dataset)
{
    /// <summary>The name that people know the file by, where it is not that of the path.</summary>
    public string? FileName { get; init; }

    /// <summary>Who sent it; null for the command line.</summary>
    public string? By { get; init; }

    /// <summary>How columns are read, where their names do not say so.</summary>
    public MappingFile? Mapping { get; init; }

    /// <summary>Order of day and month in dates such as 3/6/1998.</summary>
    public DateOrder DateOrder { get; init; }

    /// <summary>Names that the taxon list lacks are added instead of refused.</summary>
    public bool NewTaxa { get; init; }

    /// <summary>Nothing is kept.</summary>
    public bool DryRun { get; init; }

    /// <summary>What was stated about columns and dates, as a mapping file; null when nothing was.</summary>
    internal string? StatedJson()
    {
        if (Mapping is null && DateOrder == DateOrder.NotStated)
            return null;
        using var json = new MemoryStream();
        ((Mapping ?? new()) with { DateOrder = DateOrder != DateOrder.NotStated ? DateOrder : Mapping?.DateOrder ?? DateOrder.NotStated }).Write(json);
        return Encoding.UTF8.GetString(json.ToArray());
    }

    internal ImportOptions Options(DateOnly today) => new() { Today = today, Mapping = Mapping, DateOrder = DateOrder, NewTaxa = NewTaxa };
}

/// <summary>What an import did.</summary>
/// <param name="Request">The file.</param>
/// <param name="Figures">The counts.</param>
/// <param name="Mapping">Which column was taken for which term.</param>
/// <param name="Took">How long it took.</param>
public sealed record ImportAnswer(ImportRequest Request, ImportFigures Figures, IReadOnlyDictionary<string, string> Mapping, TimeSpan Took);
