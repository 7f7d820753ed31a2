namespace RangeMap.Records;

/// <summary>A sheet of a workbook.</summary>
internal sealed class WorksheetFile : RecordFile
{
    private readonly FileBundle _files;
    private readonly Workbook _book;
    private readonly SheetHeader _header;
    private readonly ImportOptions _options;

    /// <param name="stream">What the workbook is read from.</param>
    /// <param name="files">The files inside; closed with this.</param>
    /// <param name="options">Sheet and limits.</param>
    public WorksheetFile(Stream stream, FileBundle files, ImportOptions options)
        : base(stream)
    {
        _files = files;
        _options = options;
        _book = Workbook.Open(files, options.Limits);
        _header = SheetHeader.Choose(_book, options);
    }

    /// <inheritdoc/>
    public override FileDescription Description => new(FileKind.Worksheet, $"the sheet \"{_header.Sheet.Name}\" of a workbook", _header.Sheet.Name);

    /// <inheritdoc/>
    public override RowSource Open() => SheetRows.Open(_book, _header, _options);

    /// <inheritdoc/>
    public override void Dispose()
    {
        _files.Dispose();
        base.Dispose();
    }

    /// <inheritdoc/>
    protected override RowSource OpenAgain() => Open();
}
