using System.IO.Pipelines;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Microsoft.AspNetCore.Http.Features;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Sending files, watching their imports, and taking imports back.</summary>
internal static class ImportEndpoints
{
    private const int MostRefusals = 1_000;
    private static readonly TimeSpan LookEvery = TimeSpan.FromMilliseconds(250);

    public static void MapImports(this RouteGroupBuilder api)
    {
        var imports = api.MapGroup("/imports").Require(Right.Import).WithTags("Imports");
        imports.MapPost("", Receive).WithSummary("Sends a file: its bytes are the body. It waits for its start unless start=true.").Produces<ImportJson>(StatusCodes.Status201Created);
        imports.MapGet("", List).WithSummary("Files that wait or run, and imports, newest first.");
        imports.MapGet("/{id}", One).WithSummary("One import, by the name it got on arrival or by its batch number.");
        imports.MapPost("/{id}/start", Start).WithSummary("Starts the import of a file that was sent, or tries it without keeping anything.").Produces<ImportJson>(StatusCodes.Status202Accepted);
        imports.MapPost("/{id}/preview", Preview).WithSummary("Shows how the first rows of a file that was sent would be read.");
        imports.MapGet("/{id}/names", Names).WithSummary("Names that made rows of an import refused, with the nearest names of the list.");
        imports.MapGet("/{id}/events", Events).WithSummary("Server-sent events: progress while the import runs, then end.");
        imports.MapGet("/{id}/refusals", Refusals).WithSummary("Refused rows with what is wrong and how to mend it.");
        imports.MapGet("/{id}/refusals.csv", RefusalsCsv).WithSummary("Refused rows in the file's own columns with the reason, ready to mend and send again.");
        imports.MapGet("/{id}/mapping.json", Mapping).WithSummary("What was stated about columns and dates, to be used for the next file of the kind.").Produces<MappingFileShape>();
        imports.MapPost("/{id}/retry", Retry).WithSummary("Sends the refused rows of an import again as a new file, after names were accepted or the taxon list was mended.").Produces<ImportJson>(StatusCodes.Status201Created);
        imports.MapDelete("/{id}", Delete).WithSummary("Takes an import back exactly, or takes away a file that waits or runs.").Produces<UndoneJson>().Produces(StatusCodes.Status204NoContent);
    }

    private static async Task<IResult> Receive(
        HttpContext http, ImportRunner runner, UploadFolder files, string dataset, string file, bool start = false, string? dateOrder = null, bool newTaxa = false)
    {
        if (string.IsNullOrWhiteSpace(dataset))
            throw new UserException("The data set has no name.", "dataset", "Name the data set that the records belong to.");
        files.Admit(http.Request.ContentLength);
        // The folder of uploads watches the length itself, while it writes.
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
            limit.MaxRequestBodySize = null;
        var stated = new ImportStatements { DateOrder = ImportAsk.Order(dateOrder), NewTaxa = newTaxa };
        var upload = await runner.ReceiveAsync(http.Request.Body, file, dataset.Trim(), http.Caller().Name!, http.RequestAborted);
        if (start)
            runner.Start(upload, stated);
        return Results.Created($"/api/v1/imports/{upload.Id}", ImportJson.Of(upload));
    }

    private static ImportListJson List(ImportRunner runner, UploadFolder files, DataFolder folder)
    {
        var waiting = runner.All.Where(upload => upload.State is not (ImportState.Done or ImportState.Undone)).Select(ImportJson.Of);
        return new([.. waiting, .. new BatchStore(folder.Database).ReadAll().Select(ImportJson.Of)], files.MostBytes);
    }

    private static ImportJson One(ImportRunner runner, DataFolder folder, string id) =>
        runner.TryFind(id, out var upload) ? ImportJson.Of(upload) : ImportJson.Of(ImportAsk.Batch(folder, runner, id));

    private static IResult Start(ImportRunner runner, string id, StartJson? start)
    {
        var upload = ImportAsk.Upload(runner, id);
        runner.Start(upload, ImportAsk.Statements(start));
        return Results.Accepted($"/api/v1/imports/{upload.Id}", ImportJson.Of(upload));
    }

    private static PreviewJson Preview(ImportRunner runner, DataFolder folder, TimeProvider clock, string id, StartJson? start)
    {
        var upload = ImportAsk.Upload(runner, id);
        if (upload.State is ImportState.Done or ImportState.Undone)
            throw new UserException("This import is over.", "id", "Its report says what became of the file.", StatusCodes.Status409Conflict);
        var stated = ImportAsk.Statements(start);
        return PreviewJson.Of(PreviewImport.Run(ImportContext.Of(folder, clock), runner.FileOf(upload), upload.FileName, stated), stated);
    }

    private static UnknownNameListJson Names(ImportRunner runner, DataFolder folder, TimeProvider clock, string id) =>
        UnknownNameListJson.Of(RefusedNames.Of(folder, ImportAsk.Batch(folder, runner, id), new TaxonStore(folder.Database, clock).Read()));

    private static IResult Events(ImportRunner runner, string id, CancellationToken cancel)
    {
        var upload = ImportAsk.Upload(runner, id);
        return Results.ServerSentEvents(Watch(upload, cancel));
    }

    private static async IAsyncEnumerable<SseItem<object>> Watch(Upload upload, [EnumeratorCancellation] CancellationToken cancel)
    {
        for (ImportProgress? told = null; upload.State is ImportState.Queued or ImportState.Running;)
        {
            if (upload.Progress is { } progress && progress != told)
                yield return new(told = progress, "progress");
            await Task.Delay(LookEvery, cancel);
        }

        yield return new(ImportJson.Of(upload), "end");
    }

    private static RefusalListJson Refusals(ImportRunner runner, DataFolder folder, string id, long after = 0, int limit = 100)
    {
        var batch = ImportAsk.Batch(folder, runner, id);
        var page = new BatchStore(folder.Database).RefusalPage(batch.Number, after, Math.Clamp(limit, 1, MostRefusals));
        return new(batch.Refused, [.. page.Select(refusal => new RefusalJson(refusal.Row, refusal.Line, refusal.Field, refusal.Value, refusal.Reason, refusal.RawText))]);
    }

    private static IResult RefusalsCsv(ImportRunner runner, DataFolder folder, string id)
    {
        var batch = ImportAsk.Batch(folder, runner, id);
        return Results.Stream(to => RefusedRows.WriteAsync(folder, batch, to), "text/csv; charset=utf-8", FormattableString.Invariant($"refused-{batch.Number}.csv"));
    }

    private static IResult Mapping(ImportRunner runner, DataFolder folder, string id)
    {
        var batch = ImportAsk.Batch(folder, runner, id);
        var report = JsonSerializer.Deserialize<Dictionary<string, string>>(batch.Mapping)!;
        using var json = new MemoryStream();
        MappingFile.OfReport(report, ImportAsk.MappingOf(batch)).Write(json);
        return Results.Bytes(json.ToArray(), "application/json", FormattableString.Invariant($"mapping-{batch.Number}.json"));
    }

    private static async Task<IResult> Retry(HttpContext http, ImportRunner runner, DataFolder folder, string id)
    {
        var batch = ImportAsk.Batch(folder, runner, id);
        if (batch.Refused == 0)
            throw new UserException("No row of this import was refused.", "id", "There is nothing to send again.", StatusCodes.Status409Conflict);
        // Through a pipe: there may be millions of them.
        var pipe = new Pipe();
        var writing = RefusedRows.WriteAsync(folder, batch, pipe.Writer);
        await using var rows = pipe.Reader.AsStream();
        var upload = await runner.ReceiveAsync(rows, $"refused rows of {batch.FileName}", batch.Dataset, http.Caller().Name!, http.RequestAborted);
        await writing;
        runner.Start(upload, KeptStatements.Of(batch, ImportAsk.MappingOf(batch)));
        return Results.Created($"/api/v1/imports/{upload.Id}", ImportJson.Of(upload));
    }

    private static IResult Delete(ImportRunner runner, DataFolder folder, CurrentData current, TimeProvider clock, string id)
    {
        if (runner.TryFind(id, out var upload) && upload.State is not (ImportState.Done or ImportState.Undone))
        {
            runner.Remove(upload);
            return Results.NoContent();
        }

        var batch = ImportAsk.Batch(folder, runner, id);
        if (batch.UndoneAt is not null)
            throw new UserException(FormattableString.Invariant($"Import {batch.Number} was taken back already."), "id", "Send its file again if its records shall count again.", StatusCodes.Status409Conflict);
        var undone = new BatchUndo(folder.Database, clock).Run(batch.Number);
        if (upload is not null)
            upload.State = ImportState.Undone;
        current.LookAgain();
        return Results.Ok(UndoneJson.Of(undone));
    }
}
