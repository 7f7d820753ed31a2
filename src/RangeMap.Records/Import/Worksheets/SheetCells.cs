using System.Globalization;
using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>The cells of a sheet, row after row, as texts (ECMA-376 part 1, 18.3.1). Only the row at hand is in memory.</summary>
internal sealed class SheetCells(Workbook book, SheetEntry sheet, FileLimits limits) : IDisposable
{
    private readonly UntrustedXmlReader _xml = UntrustedXml.Open(book.Files, sheet.Part!, limits, limits.UnpackedBytes);
    private readonly List<string> _cells = [];
    private long _characters;
    private int _nextColumn;

    /// <summary>The row at hand as the spreadsheet numbers it, from 1.</summary>
    public long Row { get; private set; }

    /// <summary>The texts of the row, by column; columns after the last cell are missing.</summary>
    public IReadOnlyList<string> Cells => _cells;

    /// <summary>True when the row holds more characters than a row may; cells after that are left out.</summary>
    public bool IsTooLong => _characters > RowLimits.Default.Characters;

    /// <summary>True when every cell is empty.</summary>
    public bool IsBlank => _cells.TrueForAll(string.IsNullOrWhiteSpace);

    /// <summary>Cells that hold an error such as #N/A.</summary>
    public CellTally Errors { get; } = new();

    /// <summary>Formulas whose result was not stored.</summary>
    public CellTally FormulasWithoutResult { get; } = new();

    /// <summary>Moves to the next row that the sheet holds; false at the end.</summary>
    public bool ReadRow()
    {
        while (_xml.ReadStart())
        {
            if (_xml.Element != "row")
                continue;
            BeginRow();
            if (!_xml.IsEmpty)
                ReadCells();
            return true;
        }

        return false;
    }

    /// <inheritdoc/>
    public void Dispose() => _xml.Dispose();

    private void BeginRow()
    {
        _cells.Clear();
        _characters = _nextColumn = 0;
        var stated = _xml.Attribute("r");
        Row = stated is null ? Row + 1 : long.TryParse(stated, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
        var shown = stated ?? "beyond the last";
        if (Row is < 1 or > CellName.Rows)
            throw ContainerProblem.Damaged($"Sheet \"{sheet.Name}\"", Invariant($"A row is numbered {shown}; a sheet has rows 1 to {CellName.Rows:N0} (line {_xml.Line} of {sheet.Part})."));
    }

    private void ReadCells()
    {
        var depth = _xml.Depth;
        while (_xml.ReadInside(depth))
        {
            if (_xml.IsStart && _xml.Element == "c")
                ReadCell();
        }
    }

    private void ReadCell()
    {
        var name = _xml.Attribute("r");
        var column = name is null ? _nextColumn : CellName.ColumnOf(name);
        if (column is < 0 or >= CellName.Columns)
            throw ContainerProblem.Damaged($"Sheet \"{sheet.Name}\"", $"Row {Row} has a cell called \"{name}\"; a sheet has columns A to XFD.");
        _nextColumn = column + 1;
        string type = _xml.Attribute("t") ?? "n", format = _xml.Attribute("s") ?? "";
        var text = ReadText(type, format, column);
        if (text.Length == 0)
            return;
        _characters += text.Length;
        if (IsTooLong)
            return;
        while (_cells.Count <= column)
            _cells.Add("");
        _cells[column] = text;
    }

    private string ReadText(string type, string format, int column)
    {
        if (_xml.IsEmpty)
            return "";
        string? value = null, inline = null;
        var hasFormula = false;
        var depth = _xml.Depth;
        while (_xml.ReadInside(depth))
        {
            if (!_xml.IsStart)
                continue;
            if (_xml.Element == "v")
                value = _xml.ReadContent();
            else if (_xml.Element == "is")
                inline = SharedTextTable.ReadRuns(_xml, RowLimits.Default.Characters);
            else if (_xml.Element == "f")
                hasFormula = true;
        }

        if (value is null && inline is null && hasFormula)
            FormulasWithoutResult.Add(column, Row);
        return inline ?? (string.IsNullOrEmpty(value) ? "" : Understand(type, format, value, column));
    }

    private string Understand(string type, string format, string value, int column)
    {
        switch (type)
        {
            case "s":
                return Shared(value, column);
            case "b":
                return value == "1" ? "TRUE" : "FALSE";
            case "e":
                Errors.Add(column, Row);
                return "";
            case "n":
                return OfNumber(value, format);
            default:
                return SharedTextTable.Unescape(value);
        }
    }

    private string Shared(string value, int column) =>
        int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < book.SharedTexts.Count
            ? book.SharedTexts[index]
            : throw ContainerProblem.Damaged($"Sheet \"{sheet.Name}\"", $"Cell {CellName.Of(column, Row)} refers to a text that the workbook does not have.");

    private string OfNumber(string value, string format)
    {
        if (!double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
            return value;
        var kind = int.TryParse(format, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < book.Formats.Count ? book.Formats[index] : CellFormat.Number;
        return kind switch
        {
            CellFormat.Day => CellNumber.Day(number, book.DayCount),
            CellFormat.Time => CellNumber.Time(number),
            _ => CellNumber.Plain(number),
        };
    }
}
