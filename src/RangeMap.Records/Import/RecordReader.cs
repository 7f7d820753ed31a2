using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>
/// Reads a delimited text file row by row. Each row becomes either a record or a refusal; none is lost, and only the row
/// at hand is in memory. Blank rows are passed over and counted.
/// </summary>
/// <remarks>
/// The stream is read once. Only when a date such as 3/6/1998 turns up and no order was stated, the whole file is read
/// ahead for a proof of the order; for that the stream must be able to seek (copy it to a temporary file otherwise).
/// Not safe for use by several threads at once.
/// </remarks>
public sealed class RecordReader
{
    private readonly Stream _stream;
    private readonly long _streamStart;
    private readonly ImportOptions _options;
    private readonly FileOpening _file;
    private readonly RowReader _rows;
    private readonly TaxonResolver _taxa;
    private readonly RowInterpreter _interpreter;

    private RecordReader(Stream stream, TaxonList list, ImportOptions options)
    {
        _stream = stream;
        _options = options;
        _streamStart = stream.CanSeek ? stream.Position : 0;
        _file = FileOpening.Open(stream, options.Encoding, options.Separator);
        _rows = _file.Rows;
        Mapping = ColumnMapping.From(_file.Header, options.Mapping);
        if (_rows.PeekLine().IsEmpty)
            throw new ImportProblemException(new("The file has a header and no rows.", "after the header", "Is it the right file?"));
        _taxa = new TaxonResolver(list, options.AcceptedNames, options.NewTaxa);
        var order = options.DateOrder != DateOrder.NotStated ? options.DateOrder : options.Mapping?.DateOrder ?? DateOrder.NotStated;
        _interpreter = new RowInterpreter(
            new RowCells(_rows, Mapping), _taxa, new RowDates(options.Today, order, SurveyDates),
            new GridReferenceOptions(options.ChannelIslandsWgs84), IdentityColumn.Of(Mapping),
            new RecordChecks(options.Checks), options.FileChecks);
    }

    /// <summary>What the columns are read as.</summary>
    public ColumnMapping Mapping { get; }

    /// <summary>How the file's characters are written.</summary>
    public TextEncoding Encoding => _file.Source.Encoding;

    /// <summary>The character between the file's fields.</summary>
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

    /// <summary>The physical line on which the row at hand begins, counted from 1.</summary>
    public long Line => _rows.Line;

    /// <summary>The row at hand as it stands in the file. Valid until the next call of <see cref="Read"/>.</summary>
    public ReadOnlySpan<char> RawText => _rows.Raw;

    /// <summary>The record of the row at hand; null when it was refused.</summary>
    public Record? Record { get; private set; }

    /// <summary>The refusal of the row at hand; null when it became a record.</summary>
    public Refusal? Refusal { get; private set; }

    /// <summary>Opens a file at its header.</summary>
    /// <param name="stream">Read from where it stands; not closed.</param>
    /// <param name="taxa">The names that are known.</param>
    /// <param name="options">What is stated about the file.</param>
    /// <exception cref="ImportProblemException">The file as a whole cannot be read; nothing may be kept of it.</exception>
    public static RecordReader Open(Stream stream, TaxonList taxa, ImportOptions options) => new(stream, taxa, options);

    /// <summary>Moves to the next row; false at the end of the file.</summary>
    /// <exception cref="ImportProblemException">The order of the file's dates cannot be told; nothing may be kept of it.</exception>
    public bool Read()
    {
        Record = null;
        Refusal = null;
        while (_rows.Read())
        {
            if (IsBlank())
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

    private bool IsBlank() => _rows.Fault is null && _rows.Raw.IndexOfAnyExcept([_rows.Separator, ' ', '\t', '"']) < 0;

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
        Refusal = new(Row, _rows.Line, field, CharSource.Readable(fault.Value), fault.Reason, CharSource.Readable(_rows.Raw));
        Counts.CountRefusal();
    }

    /// <summary>What is wrong with the row before its cells are looked at.</summary>
    private RowFault? FaultOfText()
    {
        if (_rows.Fault is { } broken)
            return new(null, "", broken);
        if (_rows.Raw.Contains('\0'))
            return new(null, "", "The row holds NUL characters, which no text has. Was the file damaged, or saved in another form than CSV?");
        if (_file.Source.MayHoldBadText && CharSource.FirstLoneSurrogate(_rows.Raw) >= 0)
            return new(null, "", $"The row holds bytes that are no characters in {Encoding}; they are shown here as Windows-1252. Save the file as UTF-8, or state its encoding.");
        return _rows.Count == Mapping.Columns.Count
            ? null
            : new(null, "", $"The row has {_rows.Count} fields and the header {Mapping.Columns.Count}. Is a separator missing, or does a field hold one without quotation marks?");
    }

    private DateOrder SurveyDates()
    {
        if (!_stream.CanSeek)
        {
            throw new ImportProblemException(new(
                "The file has dates such as 3/6/1998, and it cannot be read twice to find out which number is the month.", $"line {_rows.Line}",
                "Give --date-order dmy if the day comes first or --date-order mdy if the month does."));
        }

        var resume = _stream.Position;
        _stream.Position = _streamStart;
        var order = DateSurvey.Run(_stream, _options, Mapping);
        _stream.Position = resume;
        return order;
    }
}
