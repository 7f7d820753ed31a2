using System.Text.Json;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>A file that was sent, or an import.</summary>
/// <param name="Id">Its name in addresses: the file's until it is imported and the server restarts, the batch's number ever after.</param>
/// <param name="Batch">Number of the batch, once there is one.</param>
/// <param name="File">Name of the file.</param>
/// <param name="Dataset">The data set.</param>
/// <param name="By">Who sent it; null for the command line.</param>
/// <param name="At">When it arrived or was imported, ISO 8601 in UTC.</param>
/// <param name="Bytes">Its length; null for an import that is over.</param>
/// <param name="State">received, queued, running, done, failed or undone.</param>
/// <param name="Progress">How far it has come, while it runs.</param>
/// <param name="Report">What the import, or a dry run of it, did.</param>
/// <param name="Problem">Why it failed.</param>
internal sealed record ImportJson(
    string Id, long? Batch, string File, string Dataset, string? By, string At, long? Bytes, [property: Words("received", "queued", "running", "done", "failed", "undone")] string State, ImportProgress? Progress, ImportReportJson? Report,
    ImportProblem? Problem)
{
    public static ImportJson Of(Upload upload) => new(
        upload.Id, upload.State is ImportState.Done or ImportState.Undone ? upload.Answer?.Figures.Batch : null, upload.FileName, upload.Dataset, upload.By,
        UtcText.Of(upload.ReceivedAt), upload.Bytes,
        JsonNamingPolicy.CamelCase.ConvertName(upload.State.ToString()), upload.Progress, upload.Answer is { } answer ? ImportReportJson.Of(answer) : null, upload.Problem);

    public static ImportJson Of(StoredBatch batch) => new(
        batch.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), batch.Number, batch.FileName, batch.Dataset, batch.MadeBy, batch.ImportedAt, null,
        batch.UndoneAt is null ? "done" : "undone", null, ImportReportJson.Of(batch), null);
}

/// <summary>What an import did.</summary>
internal sealed record ImportReportJson(
    long Read, long Accepted, long Updated, long Unchanged, long Refused, double? Seconds, string? Form, IReadOnlyDictionary<string, int> Doubts,
    IReadOnlyDictionary<string, string> Mapping, bool DryRun, string? UndoneAt, IReadOnlyList<string> Notes)
{
    public static ImportReportJson Of(ImportAnswer answer)
    {
        var figures = answer.Figures;
        return new(
            figures.Read, figures.Accepted, figures.Updated, figures.Unchanged, figures.Refused, Math.Round(answer.Took.TotalSeconds, 3), answer.File.Words, figures.Doubts, answer.Mapping,
            answer.Request.Stated.DryRun, null, answer.Notes);
    }

    public static ImportReportJson Of(StoredBatch batch) => new(
        batch.Read, batch.Accepted, batch.Updated, batch.Unchanged, batch.Refused, batch.Seconds, batch.Form, Parse<int>(batch.Doubts), Parse<string>(batch.Mapping), false,
        batch.UndoneAt, batch.Notes is { } notes ? JsonSerializer.Deserialize<string[]>(notes)! : []);

    private static Dictionary<string, T> Parse<T>(string json) => JsonSerializer.Deserialize<Dictionary<string, T>>(json) ?? [];
}

/// <summary>Imports.</summary>
/// <param name="Imports">Files that wait or run, and imports, newest first.</param>
/// <param name="MostBytes">Longest file that is taken, in bytes.</param>
internal sealed record ImportListJson(IReadOnlyList<ImportJson> Imports, long MostBytes);

/// <summary>Refused rows.</summary>
/// <param name="Total">How many the import has.</param>
/// <param name="Refusals">Some of them, in the order of the file.</param>
internal sealed record RefusalListJson(long Total, IReadOnlyList<RefusalJson> Refusals);

/// <summary>A refused row.</summary>
internal sealed record RefusalJson(long Row, long Line, string Field, string Value, string Reason, string Text);

/// <summary>What taking an import back did.</summary>
internal sealed record UndoneJson(long Batch, int Removed, int Restored, int ChangedLater, IReadOnlyList<long> RepeatedBy)
{
    public static UndoneJson Of(UndoneBatch undone) => new(undone.Batch, undone.Removed, undone.Restored, undone.ChangedLater, undone.RepeatedBy);
}
