using System.Globalization;

namespace RangeMap.Records;

/// <summary>
/// Writes refusals as a CSV file that can be mended and imported again: the file's own columns, then where, which field
/// and why. A row that could not be split stands whole in refusedText. Cells are guarded (<see cref="FormulaGuard"/>);
/// the reader takes the guards off because it knows the file by its refusedReason column.
/// </summary>
public sealed class RefusalWriter
{
    private readonly TextWriter _writer;
    private readonly char _separator;
    private readonly int[] _kept;
    private readonly int _width;
    private readonly bool _wasGuarded;

    /// <summary>Begins the file with its header.</summary>
    /// <param name="writer">Where to write; not closed.</param>
    /// <param name="columns">The headers of the file that was refused.</param>
    /// <param name="separator">The separator of the file that was refused, to split its rows by; commas are written.</param>
    public RefusalWriter(TextWriter writer, IReadOnlyList<string> columns, char separator)
    {
        _writer = writer;
        _separator = separator;
        _kept = [.. Enumerable.Range(0, columns.Count).Where(i => !RefusalColumns.Contains(columns[i]))];
        _width = columns.Count;
        _wasGuarded = columns.Contains(RefusalColumns.Reason, StringComparer.OrdinalIgnoreCase);
        WriteRow(columns.Where(c => !RefusalColumns.Contains(c)).Select(c => FormulaGuard.Guard(c)).Concat(RefusalColumns.All));
    }

    /// <summary>Writes one refusal.</summary>
    public void Write(Refusal refusal)
    {
        var cells = RowText.Split(refusal.RawText, _separator);
        var fits = cells is not null && cells.Count <= _width;
        var own = _kept.Select(i => fits && i < cells!.Count ? Own(cells[i]) : "");
        var whole = cells?.Count == _width ? "" : FormulaGuard.Guard(refusal.RawText);
        WriteRow([.. own, refusal.Line.ToString(CultureInfo.InvariantCulture), FormulaGuard.Guard(refusal.Field), FormulaGuard.Guard(refusal.Reason), whole]);
    }

    private string Own(string cell) => FormulaGuard.Guard(_wasGuarded ? FormulaGuard.Unguard(cell) : cell);

    private void WriteRow(IEnumerable<string> cells) => _writer.Write(string.Join(',', cells.Select(CsvCell.Of)) + "\r\n");
}
