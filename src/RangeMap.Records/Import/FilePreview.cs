namespace RangeMap.Records;

/// <summary>The beginning of a file before anything is stated about it: its columns with what stands in them.</summary>
public sealed class FilePreview
{
    private const int Samples = 3;

    private FilePreview(FileDescription file, IReadOnlyList<string> columns, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        File = file;
        Columns = columns;
        Rows = rows;
    }

    /// <summary>What the file turned out to be.</summary>
    public FileDescription File { get; }

    /// <summary>The headers in the order of the file.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>The cells of the first rows.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Rows { get; }

    /// <summary>The first few different texts of a column, empty ones left out.</summary>
    public IReadOnlyList<string> SamplesOf(int column) =>
        [.. Rows.Select(row => column < row.Count ? row[column] : "").Where(cell => cell.Length > 0).Distinct(StringComparer.Ordinal).Take(Samples)];

    /// <summary>Reads the beginning of a file.</summary>
    /// <param name="stream">Read from where it stands; not closed.</param>
    /// <param name="options">What is stated about how it is written; its mapping does not matter.</param>
    /// <param name="rows">Rows to read at most.</param>
    /// <param name="longestCell">Characters of a cell that are kept.</param>
    /// <exception cref="ImportProblemException">The file as a whole cannot be read.</exception>
    public static FilePreview Read(Stream stream, ImportOptions options, int rows, int longestCell = 200)
    {
        using var file = RecordFileOpening.Of(stream, options);
        using var source = file.Open();
        var columns = ColumnMapping.NamesOf(source.Header);
        var kept = new List<IReadOnlyList<string>>();
        while (kept.Count < rows && source.Read())
        {
            if (!source.IsBlank)
                kept.Add([.. Enumerable.Range(0, source.Count).Select(i => CellOf(source[i], longestCell))]);
        }

        return new(file.Description, columns, kept);
    }

    private static string CellOf(ReadOnlySpan<char> text, int longest)
    {
        text = text.Trim();
        return text.Length <= longest ? CharSource.Readable(text) : CharSource.Readable(text[..longest]) + "…";
    }
}
