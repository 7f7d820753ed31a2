using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>Shows how the first rows of a file would be read, before anything is imported.</summary>
internal static class PreviewImport
{
    private const int RowsShown = 20, RowsCounted = 1_000;

    /// <summary>Reads the beginning of a file as it would be imported.</summary>
    /// <exception cref="UserException">The file as a whole cannot be read.</exception>
    public static ImportPreview Run(ImportContext context, string path, string fileName, ImportStatements stated)
    {
        using var file = File.OpenRead(path);
        var options = context.Options(stated) with { FileChecks = new(context.Checks) };
        try
        {
            var seen = FilePreview.Read(file, options, RowsShown);
            file.Position = 0;
            return Interpret(context, file, seen, options);
        }
        catch (ImportProblemException stopped)
        {
            throw new UserException(stopped.Problem.What, $"{fileName}, {stopped.Problem.Where}", stopped.Problem.Mend);
        }
    }

    private static ImportPreview Interpret(ImportContext context, FileStream file, FilePreview seen, ImportOptions options)
    {
        var rows = new List<PreviewRow>();
        try
        {
            using var reader = RecordReader.Open(file, context.Taxa, options);
            while (reader.Counts.Read < RowsCounted && reader.Read())
            {
                if (rows.Count < seen.Rows.Count)
                    rows.Add(new(reader.Row, seen.Rows[rows.Count], reader.Record, reader.Refusal));
            }

            return new(seen, reader.Mapping, rows, reader.Counts, Problem: null);
        }
        catch (ImportProblemException stopped)
        {
            // The columns are shown all the same, for a person to say what they mean.
            var unread = seen.Rows.Select((cells, i) => new PreviewRow(i + 1, cells, null, null));
            return new(seen, ColumnMapping.Draft(seen.Columns, options.Mapping), [.. unread], new(), stopped.Problem);
        }
    }
}

/// <summary>How a file would be read.</summary>
/// <param name="File">Its beginning.</param>
/// <param name="Mapping">What its columns are read as, or would be as far as their names tell.</param>
/// <param name="Rows">The first rows.</param>
/// <param name="Counts">What would become of the first thousand rows.</param>
/// <param name="Problem">Why the file cannot be imported yet; null when it can.</param>
internal sealed record ImportPreview(FilePreview File, ColumnMapping Mapping, IReadOnlyList<PreviewRow> Rows, ImportCounts Counts, ImportProblem? Problem);

/// <summary>A row as it would be read.</summary>
/// <param name="Row">Its number.</param>
/// <param name="Cells">Its cells.</param>
/// <param name="Record">The record that it would become.</param>
/// <param name="Refusal">Why it would be refused.</param>
internal sealed record PreviewRow(long Row, IReadOnlyList<string> Cells, Record? Record, Refusal? Refusal);
