using System.Text;
using System.Text.Json;
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

    /// <summary>Imports a file, or with <see cref="ImportStatements.DryRun"/> only tells what importing it would do.</summary>
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
        await using var source = ImportSource.Open(request.Path);
        var context = ImportContext.Of(folder, clock);
        try
        {
            using var reader = source.Read(context.Taxa, context.Options(request.Stated, source.ExpectedRows()));
            using var session = ImportSession.Begin(folder.Database, request.Dataset, request.NameOfFile, clock);
            await Task.Run(() => PassAsync(reader, session, new Pace(source, clock, progress), cancel), cancel);
            var mapping = reader.Mapping.Report;
            var figures = session.Figures();
            string? keptAs = null;
            if (!request.Stated.DryRun)
            {
                var hash = await source.HashAsync(cancel);
                keptAs = reader.Kept.Count > 0 ? await KeptArchive.KeepAsync(folder, request.Path, hash, cancel) : null;
                figures = session.Commit(hash, new FileHeader(reader.Mapping.Columns, reader.Separator).ToJson(), mapping, Details(request, reader, began));
            }

            return new(request, figures, mapping, clock.GetElapsedTime(started))
            {
                File = reader.File,
                Notes = reader.Notes,
                Kept = reader.Kept,
                KeptAs = keptAs,
                NotUnderstood = reader.NotUnderstood,
                UnknownNames = reader.UnknownNames,
            };
        }
        catch (ImportProblemException stopped)
        {
            throw new UserException(stopped.Problem.What, $"{request.FileName ?? request.Path}, {stopped.Problem.Where}", stopped.Problem.Mend);
        }
    }

    private static BatchDetails Details(ImportRequest request, RecordReader reader, DateTimeOffset began) => new()
    {
        MadeBy = request.By,
        Began = began,
        Form = reader.File.Words,
        Stated = request.StatedJson(),
        Citation = reader.File.Citation is { } citation ? JsonSerializer.Serialize(citation) : null,
    };

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

    private sealed record RowChunk(List<Record> Records, List<Refusal> Refusals, SourceBlock Source)
    {
        /// <summary>Share of the file that was read when the chunk was made.</summary>
        public double ReadUpTo { get; init; }
    }

    /// <summary>Tells how far the import has come.</summary>
    private sealed class Pace(ImportSource source, TimeProvider clock, IProgress<ImportProgress>? progress)
    {
        private readonly long _started = clock.GetTimestamp();

        /// <summary>Only the task that reads the file may ask.</summary>
        public double Fraction => source.FractionRead;

        public void Report(RowChunk chunk) =>
            progress?.Report(ImportProgress.Of(chunk.Source.FirstRow + chunk.Source.Count - 1, chunk.ReadUpTo, clock.GetElapsedTime(_started)));
    }
}

