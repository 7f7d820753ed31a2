namespace RangeMap.Records;

/// <summary>
/// The occurrences of an archive. Where they belong to another core, such as events, a cell that an occurrence leaves empty or does
/// not have is that of its core row. A row is kept as a line of CSV with all the columns of both.
/// </summary>
internal sealed class OccurrenceRows : RowSource
{
    private readonly TableRows _rows;
    private readonly CoreIndex? _core;
    private readonly ArchiveTally _tally;
    private readonly CsvLine _line = new();
    private readonly List<(int Own, int Core)> _columns = [];
    private readonly List<string> _header;
    private bool _isAhead;
    private bool _hasLine;
    private bool _isBroken;
    private string? _fault;

    /// <param name="rows">The table of occurrences.</param>
    /// <param name="core">What they belong to, if they are not the core themselves.</param>
    /// <param name="tally">Counts what belongs to the rows.</param>
    public OccurrenceRows(TableRows rows, CoreIndex? core, ArchiveTally tally)
    {
        _rows = rows;
        _core = core;
        _tally = tally;
        _header = [.. rows.Header];
        for (var i = 0; i < _header.Count; i++)
            _columns.Add((i, core is null ? -1 : IndexOf(core.Header, _header[i])));
        for (var i = 0; core is not null && i < core.Header.Count; i++)
        {
            if (IndexOf(rows.Header, core.Header[i]) >= 0)
                continue;
            _header.Add(core.Header[i]);
            _columns.Add((-1, i));
        }
    }

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
            var (own, core) = _columns[index];
            var text = own < 0 ? default : _rows[own];
            return text.IsEmpty && core >= 0 ? _core!.Cell(core) : text;
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
            _tally.CountExtensions(_core);
            return false;
        }

        _tally.Note(_rows.Id);
        _fault = _rows.Fault;
        _isBroken = _fault is not null;
        if (!_isBroken && _core?.MoveTo(_rows.Id) == false)
            _fault = $"The occurrence belongs to \"{CharSource.Readable(_rows.Id)}\", which the core of the archive does not have.";
        return true;
    }

    /// <inheritdoc/>
    public override void Dispose()
    {
        _rows.Dispose();
        base.Dispose();
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
