using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Threading.Channels;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>
/// The three stages of an import, which work side by side on chunks of rows: rows are read into records; records are compared with each
/// other, and the rows as sent packed; what came of it is kept. Each stage sees the chunks in the order of the file.
/// </summary>
internal sealed class ImportStages(RecordReader reader, FileChecks checks, ImportSession session)
{
#if DEBUG
    // Small, so that every test crosses the seams between chunks.
    private const int RowsPerChunk = 3;
#else
    private const int RowsPerChunk = 2_000;
#endif
    private const int ChunksWaiting = 2;

    /// <summary>Memory for rows as sent, which goes round between the stages.</summary>
    private readonly ConcurrentBag<SourceRows> _spare = [];

    /// <summary>Takes all rows through the stages; the session is left to be committed.</summary>
    public async Task RunAsync(IImportPace pace, CancellationToken cancel)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        var (read, compared) = (NewChannel<ReadChunk>(), NewChannel<ComparedChunk>());
        var reading = Task.Run(() => FeedAsync(read.Writer, ReadAsync(pace), either.Token), CancellationToken.None);
        var comparing = Task.Run(() => FeedAsync(compared.Writer, CompareAsync(read.Reader, either.Token), either.Token), CancellationToken.None);
        try
        {
            await foreach (var chunk in compared.Reader.ReadAllAsync(either.Token))
                Keep(chunk, pace);
        }
        finally
        {
            // Should keeping have failed, the stages before must not wait for room for ever.
            await either.CancelAsync();
            await Task.WhenAll(reading, comparing);
        }
    }

    private static Channel<T> NewChannel<T>() => Channel.CreateBounded<T>(new BoundedChannelOptions(ChunksWaiting) { SingleReader = true, SingleWriter = true });

    /// <summary>Passes what a stage makes on to the next, and its failure too; never fails itself.</summary>
    private static async Task FeedAsync<T>(ChannelWriter<T> next, IAsyncEnumerable<T> made, CancellationToken cancel)
    {
        try
        {
            await foreach (var one in made)
                await next.WriteAsync(one, cancel);
            next.Complete();
        }
        catch (Exception error)
        {
            next.Complete(error);
        }
    }

    private async IAsyncEnumerable<ReadChunk> ReadAsync(IImportPace pace)
    {
        while (ReadSome() is { Count: > 0 } chunk)
            yield return chunk with { ReadUpTo = pace.Fraction };
        await Task.CompletedTask;
    }

    private ReadChunk ReadSome()
    {
        var chunk = new ReadChunk(reader.Row + 1, new(RowsPerChunk), [], _spare.TryTake(out var spare) ? spare : new());
        while (chunk.Count < RowsPerChunk && reader.Read())
        {
            chunk.Sent.Add(reader.RawText);
            if (reader.Record is { } record)
                chunk.Records.Add(record);
            else
                chunk.Refusals.Add(reader.Refusal!);
        }

        return chunk;
    }

    private async IAsyncEnumerable<ComparedChunk> CompareAsync(ChannelReader<ReadChunk> chunks, [EnumeratorCancellation] CancellationToken cancel)
    {
        await foreach (var chunk in chunks.ReadAllAsync(cancel))
        {
            checks.AddTo(CollectionsMarshal.AsSpan(chunk.Records));
            var source = chunk.Sent.Pack(chunk.FirstRow);
            _spare.Add(chunk.Sent);
            yield return new(chunk.Records, chunk.Refusals, source, chunk.ReadUpTo);
        }
    }

    private void Keep(ComparedChunk chunk, IImportPace pace)
    {
        foreach (var record in chunk.Records)
            session.Keep(record);
        foreach (var refusal in chunk.Refusals)
            session.Refuse(refusal);
        session.KeepSource(chunk.Source);
        pace.Report(chunk.Source.FirstRow + chunk.Source.Count - 1, chunk.ReadUpTo);
    }

    /// <summary>Some rows as they were read.</summary>
    /// <param name="FirstRow">Number of the first.</param>
    /// <param name="Records">Those that became records.</param>
    /// <param name="Refusals">The others.</param>
    /// <param name="Sent">All of them as they were sent.</param>
    private sealed record ReadChunk(long FirstRow, List<Record> Records, List<Refusal> Refusals, SourceRows Sent)
    {
        /// <summary>Number of rows.</summary>
        public int Count => Sent.Count;

        /// <summary>Share of the file that was read when the chunk was made.</summary>
        public double ReadUpTo { get; init; }
    }

    /// <summary>The same, ready to be kept.</summary>
    private sealed record ComparedChunk(List<Record> Records, List<Refusal> Refusals, SourceBlock Source, double ReadUpTo);
}

/// <summary>How far an import has come.</summary>
internal interface IImportPace
{
    /// <summary>Share of the file that was read, from 0 to 1. Only the stage that reads the file may ask.</summary>
    double Fraction { get; }

    /// <summary>Hears of rows that went through all stages.</summary>
    /// <param name="rows">Rows so far.</param>
    /// <param name="fraction">Share of the file that was read when they were.</param>
    void Report(long rows, double fraction);
}
