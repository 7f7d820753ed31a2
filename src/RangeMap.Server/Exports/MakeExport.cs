using RangeMap.Maps;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Makes exports: finds their rows and writes them to files.</summary>
internal static class MakeExport
{
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

    /// <summary>The rows of a question, made as they are read.</summary>
    public static IEnumerable<ExportRow> Rows(DataFolder folder, ExportQuestion question)
    {
        if (question.Table == ExportTables.Records)
            return RecordRows.Of(folder, question);
        return question.Table == ExportTables.Effort ? ExportRows.Effort(folder, question) : ExportRows.Presence(folder, question);
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
}
