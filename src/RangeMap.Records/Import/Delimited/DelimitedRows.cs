namespace RangeMap.Records;

/// <summary>Rows of delimited text under a header.</summary>
internal sealed class DelimitedRows : RowSource
{
    private readonly Stream? _owned;

    private DelimitedRows(CharSource source, RowReader rows, IReadOnlyList<string> header, Stream? owned)
    {
        Source = source;
        _owned = owned;
        Rows = rows;
        Header = header;
    }

    /// <summary>Where the characters come from.</summary>
    public CharSource Source { get; }

    /// <summary>Stands before the first row after the header.</summary>
    public RowReader Rows { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Header { get; }

    /// <inheritdoc/>
    public override char Separator => Rows.Separator;

    /// <inheritdoc/>
    public override TextEncoding Encoding => Source.Encoding;

    /// <inheritdoc/>
    public override bool AtEnd => Rows.PeekLine().IsEmpty;

    /// <inheritdoc/>
    public override int Count => Rows.Count;

    /// <inheritdoc/>
    public override long Line => Rows.Line;

    /// <inheritdoc/>
    public override string? Fault => Rows.Fault ?? FaultyText.Of(Rows.Raw, Source);

    /// <inheritdoc/>
    public override bool IsBlank => Rows.Fault is null && Rows.Raw.IndexOfAnyExcept([Rows.Separator, ' ', '\t', '"']) < 0;

    /// <inheritdoc/>
    public override ReadOnlySpan<char> Raw => Rows.Raw;

    /// <inheritdoc/>
    public override ReadOnlySpan<char> this[int index] => Rows[index];

    /// <summary>Opens delimited text at its header: encoding and separator are stated or told from the file.</summary>
    /// <exception cref="ImportProblemException">The text is empty, is no text, or its header cannot be split.</exception>
    public static DelimitedRows Open(Stream stream, TextEncoding? encoding, char? separator, bool closesStream = false)
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
        return new(source, rows, HeaderOf(rows), closesStream ? stream : null);
    }

    /// <inheritdoc/>
    public override bool Read() => Rows.Read();

    /// <inheritdoc/>
    public override void Dispose()
    {
        _owned?.Dispose();
        base.Dispose();
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
