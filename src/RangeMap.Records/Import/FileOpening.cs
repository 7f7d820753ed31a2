namespace RangeMap.Records;

/// <summary>Opens a delimited file: encoding, separator and header.</summary>
internal sealed class FileOpening
{
    private FileOpening(CharSource source, RowReader rows, IReadOnlyList<string> header)
    {
        Source = source;
        Rows = rows;
        Header = header;
    }

    public CharSource Source { get; }

    /// <summary>Stands before the first row after the header.</summary>
    public RowReader Rows { get; }

    public IReadOnlyList<string> Header { get; }

    /// <exception cref="ImportProblemException">The file is empty, is no text, or its header cannot be split.</exception>
    public static FileOpening Open(Stream stream, TextEncoding? encoding, char? separator)
    {
        var source = new CharSource(stream, encoding);
        var rows = new RowReader(source, RowLimits.Default);
        var first = rows.PeekLine();
        if (first.IsEmpty)
            throw Problem("The file is empty.", "Is it the right file?");
        var stated = StatedSeparator(first);
        if (stated is not null)
            rows.Read();
        rows.Separator = separator ?? stated ?? SeparatorGuess.Of(rows.PeekLine());
        if (!rows.Read())
            throw Problem("The file has no header.", "The first row must name the columns.");
        if (rows.Fault is { } fault)
            throw Problem($"The header cannot be read. {fault}", "Correct the first row.");
        if (rows.Raw.Contains('\0'))
            throw Problem("This is not a text file: its first row holds NUL characters.", "Save the table as CSV, UTF-8.");
        return new(source, rows, HeaderOf(rows));
    }

    /// <summary>Some spreadsheets state the separator in a line before the header, such as "sep=;".</summary>
    private static char? StatedSeparator(ReadOnlySpan<char> line) =>
        line.Length == 5 && line.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) ? line[4] : null;

    private static string[] HeaderOf(RowReader rows)
    {
        var header = new string[rows.Count];
        for (var i = 0; i < header.Length; i++)
            header[i] = CharSource.Readable(rows[i].Trim());
        if (!header.Contains(RefusalColumns.Reason, StringComparer.OrdinalIgnoreCase))
            return header;
        return [.. header.Select(name => FormulaGuard.Unguard(name).ToString())];
    }

    private static ImportProblemException Problem(string what, string mend) => new(new(what, "header", mend));
}
