using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using System.Threading.Channels;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Runs the imports of files that were sent, one after the other, beside the server's answers.</summary>
public sealed class ImportRunner : BackgroundService
{
    private readonly DataFolder _folder;
    private readonly UploadFolder _files;
    private readonly CurrentData _current;
    private readonly TimeProvider _clock;
    private readonly ILogger<ImportRunner> _log;
    private readonly ConcurrentDictionary<string, Upload> _uploads = new(StringComparer.Ordinal);
    private readonly Channel<Upload> _waiting = Channel.CreateUnbounded<Upload>(new() { SingleReader = true });

    /// <summary>Makes the runner, with the files whose import had not ended when the server stopped.</summary>
    public ImportRunner(DataFolder folder, UploadFolder files, CurrentData current, TimeProvider clock, ILogger<ImportRunner> log)
    {
        (_folder, _files, _current, _clock, _log) = (folder, files, current, clock, log);
        foreach (var left in files.Left())
            _uploads[left.Id] = left;
    }

    /// <summary>Files that were sent, newest first.</summary>
    public IReadOnlyList<Upload> All => [.. _uploads.Values.OrderByDescending(upload => upload.ReceivedAt).ThenBy(upload => upload.Id, StringComparer.Ordinal)];

    /// <summary>One of them.</summary>
    public bool TryFind(string id, [NotNullWhen(true)] out Upload? upload) => _uploads.TryGetValue(id, out upload);

    /// <summary>Where its file lies.</summary>
    public string FileOf(Upload upload) => _files.FileOf(upload);

    /// <summary>Takes a file in.</summary>
    /// <exception cref="UserException">It cannot be taken; nothing of it is kept.</exception>
    public async Task<Upload> ReceiveAsync(Stream from, string fileName, string dataset, string by, CancellationToken cancel)
    {
        var upload = await _files.ReceiveAsync(from, fileName, dataset, by, _clock.GetUtcNow(), cancel);
        _uploads[upload.Id] = upload;
        return upload;
    }

    /// <summary>Starts an import.</summary>
    /// <exception cref="UserException">It runs already, or is over.</exception>
    public void Start(Upload upload, ImportStatements stated)
    {
        lock (upload)
        {
            if (upload.State is not (ImportState.Received or ImportState.Failed))
                throw new UserException("This import was started already.", "import", "Wait for its end, or send the file again.", StatusCodes.Status409Conflict);
            (upload.State, upload.Stated, upload.Problem, upload.Answer, upload.Stop) = (ImportState.Queued, stated, null, null, new());
        }

        _waiting.Writer.TryWrite(upload);
    }

    /// <summary>Takes a file away that is not part of the data; an import that runs stops, and nothing of it is kept.</summary>
    public void Remove(Upload upload)
    {
        lock (upload)
        {
            upload.Stop.Cancel();
            if (upload.State is ImportState.Running)
                return;
            _uploads.TryRemove(upload.Id, out _);
        }

        _files.Remove(upload);
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await foreach (var upload in _waiting.Reader.ReadAllAsync(stoppingToken))
        {
            using var stop = CancellationTokenSource.CreateLinkedTokenSource(stoppingToken, upload.Stop.Token);
            if (_uploads.ContainsKey(upload.Id))
                await RunAsync(upload, stop.Token);
        }
    }

    private async Task RunAsync(Upload upload, CancellationToken cancel)
    {
        upload.State = ImportState.Running;
        try
        {
            var request = new ImportRequest(_files.FileOf(upload), upload.Dataset)
            {
                FileName = upload.FileName,
                By = upload.By,
                Stated = upload.Stated,
            };
            upload.Answer = await ImportFile.RunAsync(_folder, request, _clock, new Latest(upload), cancel);
            End(upload, request.Stated.DryRun ? ImportState.Received : ImportState.Done);
        }
        catch (OperationCanceledException) when (upload.Stop.IsCancellationRequested)
        {
            End(upload, ImportState.Failed);
            Remove(upload);
        }
        catch (Exception error) when (error is not OperationCanceledException)
        {
            Fail(upload, error);
        }
    }

    private void End(Upload upload, ImportState state)
    {
        lock (upload)
            (upload.State, upload.Progress) = (state, null);
        if (state != ImportState.Done)
            return;
        _current.LookAgain();
        _files.Remove(upload);
        ImportAftercare.Run(_folder.Database);
    }

    private void Fail(Upload upload, Exception error)
    {
        upload.Problem = error switch
        {
            UserException problem => new(problem.Message, problem.Where, problem.Mend),
            StoreException problem => new(problem.Message, "data folder", problem.Mend),
            _ => new("The server failed while it read the file.", "server", "This is a fault of the server, not of the file. It has been logged, and nothing half-done was kept."),
        };
        if (error is not (UserException or StoreException))
            _log.LogImportFailure(error, upload.Id);
        End(upload, ImportState.Failed);
    }

    /// <summary>Keeps the newest progress at hand; reports come from another thread and must not wait.</summary>
    private sealed class Latest(Upload upload) : IProgress<ImportProgress>
    {
        public void Report(ImportProgress value) => upload.Progress = value;
    }
}

internal static partial class ImportLog
{
    [LoggerMessage(Level = LogLevel.Error, Message = "The import {Id} failed.")]
    public static partial void LogImportFailure(this ILogger log, Exception exception, string id);
}
