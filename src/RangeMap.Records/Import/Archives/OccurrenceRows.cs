namespace RangeMap.Records;

/// <summary>
/// The occurrences of an archive. Where they belong to another core, such as events, a cell that an occurrence leaves empty or does
/// not have is that of its core row. What extensions tell of an occurrence stands in columns of their own. A row is kept as a line of CSV
/// with all these columns.
/// </summary>
internal sealed class OccurrenceRows : RowSource
{
    private readonly TableRows _rows;
    private readonly CoreIndex? _core;
    private readonly ArchiveTally _tally;
    private readonly CsvLine _line = new();
    private readonly ExtensionFill _fill;
    private readonly ExtensionFill.Own _ownText;
    private readonly List<Column> _columns = [];
    private readonly List<string> _header;
    private readonly int _id;
    private bool _isAhead;
    private bool _hasLine;
    private bool _isBroken;
    private string? _fault;

    /// <param name="rows">The table of occurrences.</param>
    /// <param name="core">What they belong to, if they are not the core themselves.</param>
    /// <param name="fill">What extensions tell of them.</param>
    /// <param name="tally">Counts what belongs to the rows.</param>
    public OccurrenceRows(TableRows rows, CoreIndex? core, ExtensionFill fill, ArchiveTally tally)
    {
        _rows = rows;
        _core = core;
        _fill = fill;
        _ownText = OwnText;
        _tally = tally;
        _header = [.. rows.Header];
        _id = IndexOf(_header, TermNames.Name(Term.OccurrenceId));
        for (var i = 0; i < _header.Count; i++)
            _columns.Add(new(i, core is null ? -1 : IndexOf(core.Header, _header[i]), null));
        for (var i = 0; core is not null && i < core.Header.Count; i++)
        {
            if (IndexOf(rows.Header, core.Header[i]) >= 0)
                continue;
            _header.Add(core.Header[i]);
            _columns.Add(new(-1, i, null));
        }

        foreach (var term in fill.Terms)
            MakeFilledColumn(term);
    }

    /// <summary>Where the text of a column comes from.</summary>
    /// <param name="Own">The column of the occurrences; -1 for none.</param>
    /// <param name="Core">The column of the core that they belong to; -1 for none.</param>
    /// <param name="Filled">The term that extensions fill; null for none.</param>
    /// <param name="IsCopy">True for a new column that takes the text of one with a plain name.</param>
    private readonly record struct Column(int Own, int Core, Term? Filled, bool IsCopy = false);

    /// <inheritdoc/>
    public override IReadOnlyList<string> Header => _header;

    /// <inheritdoc/>
    public override char Separator => ',';

    /// <inheritdoc/>
    public override TextEncoding Encoding => _rows.Encoding;

    /// <inheritdoc/>
    public override DateOrder StatedDateOrder => _rows.Table.DateOrder;

    /// <inheritdoc/>
    public override bool AtEnd
    {
        get
        {
            _isAhead = _isAhead || Read();
            return !_isAhead;
        }
    }

    /// <inheritdoc/>
    public override int Count => _columns.Count;

    /// <inheritdoc/>
    public override long Line => _rows.Line;

    /// <inheritdoc/>
    public override string Place => _rows.Table.Files.Count > 1 ? _rows.File : "";

    /// <inheritdoc/>
    public override string? Fault => _fault;

    /// <inheritdoc/>
    public override bool IsBlank => _rows.IsBlank;

    /// <inheritdoc/>
    public override ReadOnlySpan<char> Raw
    {
        get
        {
            if (_isBroken)
                return _rows.Raw;
            if (!_hasLine)
                BuildLine();
            return _line.Text;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Notes => [.. _tally.Sentences(_core)];

    /// <inheritdoc/>
    public override ReadOnlySpan<char> this[int index]
    {
        get
        {
            var column = _columns[index];
            return column.Filled is { } term && _fill[term] is { } told ? told : TextOf(column);
        }
    }

    /// <inheritdoc/>
    public override bool Read()
    {
        _hasLine = false;
        if (_isAhead)
        {
            _isAhead = false;
            return true;
        }

        if (!_rows.Read())
        {
            _tally.CountExtensions(_core, _fill);
            return false;
        }

        _tally.Note(_rows.Id);
        _fault = _rows.Fault;
        _isBroken = _fault is not null;
        if (_isBroken)
            return true;
        if (_core?.MoveTo(_rows.Id) == false)
            _fault = $"The occurrence belongs to \"{CharSource.Readable(_rows.Id)}\", which the core of the archive does not have.";
        _fill.MoveTo(_rows.Id, _id < 0 ? default : _rows[_id].Trim(), _ownText);
        return true;
    }

    /// <inheritdoc/>
    public override void Dispose()
    {
        _rows.Dispose();
        base.Dispose();
    }

    /// <summary>The column that bears the name of a term, else a new one beside those of plain names, which stay as they were sent.</summary>
    private void MakeFilledColumn(Term term)
    {
        var official = _header.FindIndex(name => TermNames.FindOfficial(name) == term);
        if (official >= 0)
        {
            _columns[official] = _columns[official] with { Filled = term };
            return;
        }

        var plain = Enumerable.Range(0, _header.Count).Where(i => TermNames.FindPlain(_header[i]) == term).OrderBy(i => TermNames.RankOf(term, _header[i])).Cast<int?>().FirstOrDefault();
        _header.Add(TermNames.Name(term));
        _columns.Add((plain is { } like ? _columns[like] : new(-1, -1, null)) with { Filled = term, IsCopy = true });
    }

    private ReadOnlySpan<char> OwnText(Term term, out bool isOfficial)
    {
        var column = _columns.Find(c => c.Filled == term);
        isOfficial = !column.IsCopy;
        return TextOf(column);
    }

    private ReadOnlySpan<char> TextOf(Column column)
    {
        var text = column.Own < 0 ? default : _rows[column.Own];
        return text.IsEmpty && column.Core >= 0 ? _core!.Cell(column.Core) : text;
    }

    private static int IndexOf(IReadOnlyList<string> names, string name)
    {
        for (var i = 0; i < names.Count; i++)
        {
            if (names[i].Equals(name, StringComparison.OrdinalIgnoreCase))
                return i;
        }

        return -1;
    }

    private void BuildLine()
    {
        _line.Clear();
        for (var i = 0; i < Count; i++)
            _line.Add(this[i]);
        _hasLine = true;
    }
}
