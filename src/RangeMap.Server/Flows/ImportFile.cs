using System.Text.Json;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Imports one file, all in one transaction.</summary>
public static class ImportFile
{
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
            var expected = source.ExpectedRows();
            using var reader = source.Read(context.Taxa, context.Options(request.Stated, expected));
            using var session = ImportSession.Begin(folder.Database, request.Dataset, request.NameOfFile, clock);
            var stages = new ImportStages(reader, new(context.Checks, expected), session);
            await Task.Run(() => stages.RunAsync(new Pace(source, clock, progress), cancel), cancel);
            var mapping = reader.Mapping.Report;
            var figures = session.Figures();
            string? keptAs = null;
            if (!request.Stated.DryRun)
            {
                var hash = await HashWhileWriting(source, session, cancel);
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

    /// <summary>The hash of the file, made beside the writing of what was gathered: each takes seconds for millions of rows.</summary>
    private static async Task<string> HashWhileWriting(ImportSource source, ImportSession session, CancellationToken cancel)
    {
        var hashing = Task.Run(() => source.Hash(cancel), cancel);
        try
        {
            session.WriteGathered();
        }
        finally
        {
            // The file must not be closed under it.
            await Task.WhenAny(hashing);
        }

        return await hashing;
    }

    private static BatchDetails Details(ImportRequest request, RecordReader reader, DateTimeOffset began) => new()
    {
        MadeBy = request.By,
        Began = began,
        Form = reader.File.Words,
        Stated = request.StatedJson(),
        Options = KeptStatements.JsonOf(request, reader),
        Notes = reader.Notes,
        Citation = reader.File.Citation is { } citation ? JsonSerializer.Serialize(citation) : null,
    };

    /// <summary>Tells how far the import has come.</summary>
    private sealed class Pace(ImportSource source, TimeProvider clock, IProgress<ImportProgress>? progress) : IImportPace
    {
        private readonly long _started = clock.GetTimestamp();

        public double Fraction => source.FractionRead;

        public void Report(long rows, double fraction) =>
            progress?.Report(ImportProgress.Of(rows, fraction, clock.GetElapsedTime(_started)));
    }
}

