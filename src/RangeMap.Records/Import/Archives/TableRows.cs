namespace RangeMap.Records;

/// <summary>The rows of one table of an archive: all its files, one after another, with defaults in place of empty cells.</summary>
internal sealed class TableRows : IDisposable
{
    private readonly FileBundle _files;
    private readonly ArchiveTable _table;
    private readonly List<Column> _columns = [];
    private Stream? _stream;
    private CharSource? _source;
    private RowReader? _rows;
    private int _file = -1;
    private int _width;
    private bool _isAhead;

    public TableRows(FileBundle files, ArchiveTable table)
    {
        _files = files;
        _table = table;
        var names = OpenNext() ? MeasureWidth() : [];
        MakeColumns(names);
    }

    private readonly record struct Column(string Name, int Index, string Default);

    /// <summary>The short names of the columns; the place where two have the same, or a column has none.</summary>
    public IReadOnlyList<string> Header => [.. _columns.Select(c => c.Name)];

    public ArchiveTable Table => _table;

    public TextEncoding Encoding => _source?.Encoding ?? TextEncoding.Utf8;

    public string File => _table.Files[Math.Clamp(_file, 0, _table.Files.Count - 1)];

    public long Line => _rows?.Line ?? 0;

    public string? Fault
    {
        get
        {
            if ((_rows!.Fault ?? FaultyText.Of(_rows.Raw, _source!)) is { } fault)
                return fault;
            return _rows.Count == _width
                ? null
                : $"The row has {_rows.Count} fields and the file {_width}. Is a separator missing, or does a field hold one without quotation marks?";
        }
    }

    /// <summary>The row as it stands in its file.</summary>
    public ReadOnlySpan<char> Raw => _rows!.Raw;

    public bool IsBlank => _rows!.Fault is null && _rows.Raw.IndexOfAnyExcept(_table.Separator, ' ', (char)(_table.Dialect.Quote ?? ' ')) < 0;

    /// <summary>The identifier of the row, or of the core row that it belongs to; empty where there is none.</summary>
    public ReadOnlySpan<char> Id => _table.IdIndex is { } index && index < _rows!.Count ? _rows[index].Trim() : default;

    public ReadOnlySpan<char> this[int column]
    {
        get
        {
            var (_, index, otherwise) = _columns[column];
            var text = index < 0 ? default : _rows![index];
            return otherwise.Length > 0 && (text.Trim() is "" or "\\N") ? otherwise : text;
        }
    }

    public bool Read()
    {
        if (_isAhead)
        {
            _isAhead = false;
            return true;
        }

        while (_rows is not null)
        {
            if (_rows.Read())
                return true;
            if (!OpenNext())
                break;
            for (var i = 0; i < _table.HeaderLines; i++)
                _rows.Read();
        }

        return false;
    }

    public void Dispose()
    {
        _stream?.Dispose();
        _stream = null;
    }

    private bool OpenNext()
    {
        if (_file + 1 >= _table.Files.Count)
            return false;
        _stream?.Dispose();
        var name = _table.Files[++_file];
        var found = _files.Find(name) ?? throw ContainerProblem.Of($"meta.xml names the file \"{name}\", which the archive does not hold.", name, $"It holds: {string.Join(", ", _files.Names.Take(20))}.");
        _stream = _files.Open(found);
        _source = new CharSource(_stream, _table.Encoding);
        _rows = new RowReader(_source, RowLimits.Default, _table.Dialect) { Separator = _table.Separator };
        return true;
    }

    /// <summary>Passes over the header lines; the last of them, or else the first row, tells how many columns there are. Returns the names that the header gives.</summary>
    private string[] MeasureWidth()
    {
        string[] names = [];
        for (var i = 0; i < _table.HeaderLines && _rows!.Read(); i++)
            names = [.. Enumerable.Range(0, _rows.Count).Select(c => CharSource.Readable(_rows[c].Trim()))];
        _isAhead = Read();
        _width = names.Length > _table.LastIndex ? names.Length : _isAhead && _rows!.Fault is null ? _rows!.Count : _table.LastIndex + 1;
        if (_table.LastIndex >= _width)
        {
            throw ContainerProblem.Of(
                $"meta.xml speaks of column {_table.LastIndex} (counted from 0) of {File}, which has {_width} columns.", $"{File}, line {_rows!.Line}",
                "Correct the indexes in meta.xml, or fieldsTerminatedBy.");
        }

        return names;
    }

    private void MakeColumns(string[] headerNames)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var field in _table.Fields)
            _columns.Add(new(Distinct(taken, field.ShortName, field.Term), field.Index ?? -1, field.Default ?? ""));
        var described = _table.Fields.Select(f => f.Index ?? -1).ToHashSet();
        for (var i = 0; i < _width; i++)
        {
            if (described.Contains(i))
                continue;
            var own = i < headerNames.Length && headerNames[i].Length > 0 ? headerNames[i] : $"(column {i + 1})";
            var isIdentity = i == _table.IdIndex && _table.HoldsOccurrences && !taken.Contains("occurrenceID");
            // A column that meta.xml does not describe is kept and must not pass for a term by its heading.
            _columns.Add(new(Distinct(taken, isIdentity ? "occurrenceID" : i == _table.IdIndex ? "(id)" : $"({own.Trim('(', ')')})", $"(column {i + 1})"), i, ""));
        }
    }

    private static string Distinct(HashSet<string> taken, string name, string otherwise)
    {
        var chosen = taken.Contains(name) ? otherwise : name;
        for (var i = 2; !taken.Add(chosen); i++)
            chosen = $"{otherwise} ({i})";
        return chosen;
    }
}
