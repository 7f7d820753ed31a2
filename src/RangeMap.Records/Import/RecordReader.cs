using RangeMap.Grids;
using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>
/// Reads a file of records row by row: delimited text, as it is or packed with gzip; a sheet of an .xlsx workbook; a Darwin Core
/// Archive. What a file is, its bytes tell. Each row becomes either a record or a refusal; none is lost, and only the row at
/// hand is in memory. Blank rows are passed over and counted.
/// </summary>
/// <remarks>
/// The rows are read once. Only when a date such as 3/6/1998 turns up and no order was stated, the whole file is read
/// ahead for a proof of the order; for that the stream must be able to seek (copy it to a temporary file otherwise).
/// Not safe for use by several threads at once.
/// </remarks>
public sealed class RecordReader : IDisposable
{
    private readonly RecordFile _file;
    private readonly RowSource _rows;
    private readonly TaxonResolver _taxa;
    private readonly RowDates _dates;
    private readonly RowInterpreter _interpreter;

    private RecordReader(RecordFile file, TaxonList list, ImportOptions options)
    {
        _file = file;
        _rows = file.Open();
        Mapping = ColumnMapping.From(_rows.Header, options.Mapping);
        if (_rows.AtEnd)
            throw new ImportProblemException(new("The file has a header and no rows.", "after the header", "Is it the right file?"));
        _taxa = new TaxonResolver(list, options.AcceptedNames, options.NewTaxa);
        _dates = new RowDates(options.Today, OrderOf(options), SurveyDates, _rows.DayCount);
        _interpreter = new RowInterpreter(
            new RowCells(_rows, Mapping), _taxa, _dates, new GridReferenceOptions(options.ChannelIslandsWgs84), IdentityColumn.Of(Mapping),
            new RecordChecks(options.Checks), options.FileChecks, options.ExpectedRows);
    }

    /// <summary>What the columns are read as.</summary>
    public ColumnMapping Mapping { get; }

    /// <summary>The order that numeric dates were read in so far: stated, or proved by the file's own rows.</summary>
    public DateOrder DateOrder => _dates.Order;

    /// <summary>How the file's characters are written.</summary>
    public TextEncoding Encoding => _rows.Encoding;

    /// <summary>What the file turned out to be, and what it says of its origin.</summary>
    public FileDescription File => _file.Description;

    /// <summary>What was noticed about the file so far, in sentences for people.</summary>
    public IReadOnlyList<string> Notes => [.. _rows.Notes, .. NotesOfRows()];

    /// <summary>Extensions of an archive, with how many of their rows filled a record; complete once all rows were read.</summary>
    public IReadOnlyList<KeptFile> Kept => _file.Kept;

    /// <summary>The character between the fields of <see cref="RawText"/>.</summary>
    public char Separator => _rows.Separator;

    /// <summary>What became of the rows read so far.</summary>
    public ImportCounts Counts { get; } = new();

    /// <summary>Cells about what was seen that were not understood so far and are kept as written, by term; their rows are not refused.</summary>
    public IReadOnlyDictionary<Term, long> NotUnderstood => _interpreter.NotUnderstood;

    /// <summary>The names met so far that the list does not have, with suggestions, for a person to accept or correct.</summary>
    public UnknownNames UnknownNames => _interpreter.UnknownNames;

    /// <summary>Taxa made so far of names that the list does not have; empty unless the options allow them.</summary>
    public IReadOnlyCollection<Taxon> NewTaxa => _taxa.Added;

    /// <summary>The row at hand, counted from 1 for the first after the header; blank rows do not count.</summary>
    public long Row { get; private set; }

    /// <summary>The line on which the row at hand begins, counted from 1; in a sheet its row.</summary>
    public long Line => _rows.Line;

    /// <summary>The row at hand as it stands in the file, or of a sheet or archive as a line of CSV. Valid until the next call of <see cref="Read"/>.</summary>
    public ReadOnlySpan<char> RawText => _rows.Raw;

    /// <summary>The record of the row at hand; null when it was refused.</summary>
    public Record? Record { get; private set; }

    /// <summary>The refusal of the row at hand; null when it became a record.</summary>
    public Refusal? Refusal { get; private set; }

    /// <summary>Opens a file at its header.</summary>
    /// <param name="stream">Read from where it stands; not closed. Of a zip file from its beginning.</param>
    /// <param name="taxa">The names that are known.</param>
    /// <param name="options">What is stated about the file.</param>
    /// <exception cref="ImportProblemException">The file as a whole cannot be read; nothing may be kept of it.</exception>
    public static RecordReader Open(Stream stream, TaxonList taxa, ImportOptions options) => Open(RecordFileOpening.Of(stream, options), taxa, options);

    /// <summary>Opens a folder that holds the files of an archive, or one table.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="taxa">The names that are known.</param>
    /// <param name="options">What is stated about the file.</param>
    /// <exception cref="ImportProblemException">The folder as a whole cannot be read; nothing may be kept of it.</exception>
    public static RecordReader OpenFolder(string path, TaxonList taxa, ImportOptions options) => Open(RecordFileOpening.OfFolder(path, options), taxa, options);

    /// <summary>Moves to the next row; false at the end of the file.</summary>
    /// <exception cref="ImportProblemException">The order of the file's dates cannot be told; nothing may be kept of it.</exception>
    public bool Read()
    {
        Record = null;
        Refusal = null;
        while (_rows.Read())
        {
            if (_rows.IsBlank)
            {
                Counts.Blank++;
                continue;
            }

            Row++;
            Interpret();
            return true;
        }

        return false;
    }

    /// <summary>Closes what was opened inside the stream; the stream itself stays open.</summary>
    public void Dispose()
    {
        _rows.Dispose();
        _file.Dispose();
    }

    private static RecordReader Open(RecordFile file, TaxonList taxa, ImportOptions options)
    {
        try
        {
            return new(file, taxa, options);
        }
        catch (ImportProblemException)
        {
            file.Dispose();
            throw;
        }
    }

    private IEnumerable<string> NotesOfRows()
    {
        if (_dates.CountedDays > 0)
            yield return Invariant($"{_dates.CountedDays:N0} dates were plain numbers and were read as the workbook counts days.");
        if (Counts.OnCompleteLists > 0)
        {
            yield return Counts.OnCompleteLists == 1
                ? "1 record stands on a complete list: what the list lacks was looked for and not found."
                : Invariant($"{Counts.OnCompleteLists:N0} records stand on complete lists: what such a list lacks was looked for and not found.");
        }
    }

    private DateOrder OrderOf(ImportOptions options)
    {
        if (options.DateOrder != DateOrder.NotStated)
            return options.DateOrder;
        return options.Mapping is { DateOrder: not DateOrder.NotStated and var mapped } ? mapped : _rows.StatedDateOrder;
    }

    private void Interpret()
    {
        var fault = FaultOfText();
        if (fault is null && _interpreter.TryRead(Row, out var record, out fault))
        {
            Record = record;
            Counts.Count(record!);
            return;
        }

        var field = fault!.Term is { } term ? Mapping.HeaderOf(term) : "";
        var reason = _rows.Place.Length == 0 ? fault.Reason : $"{fault.Reason} (In {_rows.Place}.)";
        Refusal = new(Row, _rows.Line, field, CharSource.Readable(fault.Value), reason, CharSource.Readable(_rows.Raw));
        Counts.CountRefusal();
    }

    /// <summary>What is wrong with the row before its cells are looked at.</summary>
    private RowFault? FaultOfText()
    {
        if (_rows.Fault is { } broken)
            return new(null, "", broken);
        return _rows.Count == Mapping.Columns.Count
            ? null
            : new(null, "", $"The row has {_rows.Count} fields and the header {Mapping.Columns.Count}. Is a separator missing, or does a field hold one without quotation marks?");
    }

    private DateOrder SurveyDates()
    {
        if (!_file.CanReadTwice)
        {
            throw new ImportProblemException(new(
                "The file has dates such as 3/6/1998, and it cannot be read twice to find out which number is the month.", $"line {_rows.Line}",
                "Give --date-order dmy if the day comes first or --date-order mdy if the month does."));
        }

        return _file.ReadAgain(rows => DateSurvey.Run(rows, Mapping));
    }
}
