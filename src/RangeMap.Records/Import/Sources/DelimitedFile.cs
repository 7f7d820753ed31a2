namespace RangeMap.Records;

/// <summary>Delimited text, as it is or packed with gzip.</summary>
internal sealed class DelimitedFile : RecordFile
{
    private readonly Stream _stream;
    private readonly long _start;
    private readonly ImportOptions _options;
    private readonly bool _isGzip;
    private readonly Stream _firstReading;
    private DelimitedRows? _rows;

    /// <param name="stream">Where the file can be read again, if it can.</param>
    /// <param name="firstReading">The file from its beginning: the same stream, or one that replays what was already read of it.</param>
    /// <param name="isGzip">True when the text is packed.</param>
    /// <param name="options">Encoding, separator and limits.</param>
    public DelimitedFile(Stream stream, Stream firstReading, bool isGzip, ImportOptions options)
        : base(stream)
    {
        _stream = stream;
        _start = stream.CanSeek ? stream.Position : 0;
        _firstReading = firstReading;
        _isGzip = isGzip;
        _options = options;
    }

    /// <inheritdoc/>
    public override FileDescription Description => new(FileKind.DelimitedText, _rows is null ? "delimited text" : $"{SeparatorWords(_rows.Separator)}-separated text, {EncodingWords(_rows.Encoding)}{(_isGzip ? ", packed with gzip" : "")}");

    /// <inheritdoc/>
    public override RowSource Open() => _rows = OpenFrom(_firstReading);

    /// <inheritdoc/>
    protected override RowSource OpenAgain()
    {
        _stream.Position = _start;
        return OpenFrom(_stream);
    }

    private static string SeparatorWords(char separator) => separator switch
    {
        ',' => "comma",
        ';' => "semicolon",
        '\t' => "tab",
        '|' => "bar",
        _ => $"'{separator}'",
    };

    private static string EncodingWords(TextEncoding encoding) => encoding switch
    {
        TextEncoding.Utf8 => "UTF-8",
        TextEncoding.Utf16LittleEndian or TextEncoding.Utf16BigEndian => "UTF-16",
        _ => "Windows-1252",
    };

    private DelimitedRows OpenFrom(Stream stream) =>
        _isGzip
            ? DelimitedRows.Open(Unpack(stream), _options.Encoding, _options.Separator, closesStream: true)
            : DelimitedRows.Open(stream, _options.Encoding, _options.Separator);

    private ReplayedStream Unpack(Stream stream)
    {
        const string name = "The gzip file";
        long? packed = stream.CanSeek ? stream.Length - _start : null;
        var text = new LimitedStream(new GzipMembers(stream, name), new(name, packed), _options.Limits);
        var first = new byte[FileSignature.Length];
        var count = text.ReadAtLeast(first, first.Length, throwOnEndOfStream: false);
        var form = FileSignature.Of(first.AsSpan(0, count), out var what, out _);
        if (form != FileForm.Text)
            throw ContainerProblem.Of($"The gzip file holds no text. {what}".TrimEnd(), "gzip file", "Unpack it and import what is inside.");
        return new ReplayedStream(first.AsMemory(0, count), text);
    }
}
