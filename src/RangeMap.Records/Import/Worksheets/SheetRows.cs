using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>Rows of a sheet under its header. A row is kept as a line of CSV, so that it can be mended as one.</summary>
internal sealed class SheetRows : RowSource
{
    private readonly Workbook _book;
    private readonly SheetHeader _header;
    private readonly SheetCells _cells;
    private readonly CsvLine _line = new();
    private readonly bool _wasChosen;
    private bool _isAhead;
    private bool _hasLine;

    private SheetRows(Workbook book, SheetHeader header, ImportOptions options)
    {
        _book = book;
        _header = header;
        _wasChosen = options.Sheet is null;
        _cells = new SheetCells(book, header.Sheet, options.Limits);
        for (var i = 0; i <= header.RowsBefore; i++)
            _cells.ReadRow();
    }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Header => _header.Names;

    /// <inheritdoc/>
    public override char Separator => ',';

    /// <inheritdoc/>
    public override TextEncoding Encoding => TextEncoding.Utf8;

    /// <inheritdoc/>
    public override DayCount? DayCount => _book.DayCount;

    /// <inheritdoc/>
    public override bool AtEnd
    {
        get
        {
            while (!_isAhead && _cells.ReadRow())
                _isAhead = !_cells.IsBlank;
            return !_isAhead;
        }
    }

    /// <inheritdoc/>
    public override int Count => Math.Max(Header.Count, _cells.Cells.Count);

    /// <inheritdoc/>
    public override long Line => _cells.Row;

    /// <inheritdoc/>
    public override string? Fault => _cells.IsTooLong
        ? $"The row is longer than {RowLimits.Default.Characters} characters. Cut the long cell down."
        : null;

    /// <inheritdoc/>
    public override bool IsBlank => !_cells.IsTooLong && _cells.IsBlank;

    /// <inheritdoc/>
    public override ReadOnlySpan<char> Raw
    {
        get
        {
            if (!_hasLine)
                BuildLine();
            return _line.Text;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Notes => [.. Sentences()];

    /// <inheritdoc/>
    public override ReadOnlySpan<char> this[int index] => index < _cells.Cells.Count ? _cells.Cells[index] : "";

    /// <summary>Opens the sheet that the options name, or the first that looks like a table of records.</summary>
    /// <exception cref="ImportProblemException">The sheet is not there, has too many columns, or no cell.</exception>
    public static SheetRows Open(Workbook book, SheetHeader header, ImportOptions options) =>
        header.Names.Count <= RowLimits.Default.Fields
            ? new(book, header, options)
            : throw ContainerProblem.Of(Invariant($"The sheet has {header.Names.Count:N0} columns; at most {RowLimits.Default.Fields:N0} are read."), $"sheet \"{header.Sheet.Name}\", row {header.Row}", "Delete the columns that hold nothing.");

    /// <inheritdoc/>
    public override bool Read()
    {
        _hasLine = false;
        if (!_isAhead)
            return _cells.ReadRow();
        _isAhead = false;
        return true;
    }

    /// <inheritdoc/>
    public override void Dispose()
    {
        _cells.Dispose();
        base.Dispose();
    }

    private void BuildLine()
    {
        _line.Clear();
        for (var i = 0; i < Count; i++)
            _line.Add(this[i]);
        _hasLine = true;
    }

    private IEnumerable<string> Sentences()
    {
        yield return _wasChosen && _book.Sheets.Count > 1
            ? $"The sheet \"{_header.Sheet.Name}\" was read, of {SheetHeader.SheetsOf(_book)}."
            : $"The sheet \"{_header.Sheet.Name}\" was read.";
        if (_header.RowsBefore > 0)
            yield return $"The header was found in row {_header.Row}; the rows above it were passed over.";
        if (_cells.Errors.Count > 0)
            yield return $"Errors such as #N/A were read as empty: {_cells.Errors}.";
        if (_cells.FormulasWithoutResult.Count > 0)
            yield return $"Formulas without a stored result were read as empty: {_cells.FormulasWithoutResult}.";
    }
}
