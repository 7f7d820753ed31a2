namespace RangeMap.Records;

/// <summary>
/// Splits delimited text into rows and fields after RFC 4180, with line ends and quotation marks as its dialect has them.
/// A row whose quoting is broken costs its first line only: reading goes on at the next line.
/// </summary>
/// <remarks>Offsets of fields count from the start of the row, so that the buffer may be moved while a row is read.</remarks>
/// <param name="source">The characters.</param>
/// <param name="limits">How much a row may hold.</param>
/// <param name="dialect">Line ends and quotation marks; by default those of RFC 4180.</param>
/// <param name="firstBuffer">Characters of the buffer until a longer row makes it grow; tests make it tiny.</param>
internal sealed class RowReader(CharSource source, RowLimits limits, RowDialect? dialect = null, int firstBuffer = 1 << 14)
{
    private readonly int _quote = (dialect ?? RowDialect.Csv).Quote ?? -1;
    private readonly char _lineEnd = (dialect ?? RowDialect.Csv).LineEnd ?? '\n';
    private readonly char _otherLineEnd = (dialect ?? RowDialect.Csv).LineEnd ?? '\r';
    private readonly bool _returnsBelongToLineEnds = dialect?.LineEnd == '\n';
    private char[] _buffer = new char[firstBuffer];
    private int _start;
    private int _end;
    private int _at;
    private int _consumed;
    private int _rawLength;
    private int _innerLines;
    private int _quoteAt;
    private bool _sourceEnded;
    private FieldSpan[] _fields = new FieldSpan[64];
    private char[] _unescaped = new char[256];
    private int _unescapedLength;
    private long _nextLine = 1;

    private enum FieldEnd { Separator, LineEnd, EndOfText, TooLong, TooManyFields, TooManyLines, Unclosed, TextAfterQuote }

    private readonly record struct FieldSpan(int Start, int Length, bool Escaped);

    /// <summary>The character between fields.</summary>
    public char Separator { get; set; } = ',';

    /// <summary>The physical line, from 1, on which the row begins; line ends inside quotes count.</summary>
    public long Line { get; private set; }

    /// <summary>Number of fields of the row.</summary>
    public int Count { get; private set; }

    /// <summary>Why the row could not be split, or null.</summary>
    public string? Fault { get; private set; }

    /// <summary>The row as it stands in the file, without its line end; cut when too long to keep.</summary>
    public ReadOnlySpan<char> Raw => _buffer.AsSpan(_start, _rawLength);

    /// <summary>A field without its quotes. The text is valid until the next row is read.</summary>
    public ReadOnlySpan<char> this[int index]
    {
        get
        {
            var field = _fields[index];
            var text = _buffer.AsSpan(_start + field.Start, field.Length);
            return field.Escaped ? Unescape(text) : text;
        }
    }

    /// <summary>The first line that is not blank, without moving on; empty at the end of the file.</summary>
    public ReadOnlySpan<char> PeekLine()
    {
        SkipBlankLines();
        _at = 0;
        while (true)
        {
            var hit = _buffer.AsSpan(_start + _at, _end - _start - _at).IndexOfAny(_lineEnd, _otherLineEnd);
            if (hit >= 0)
                return _buffer.AsSpan(_start, _at + hit);
            _at = _end - _start;
            if (_at > limits.Characters || !More())
                return _buffer.AsSpan(_start, _at);
        }
    }

    /// <summary>Moves to the next row that is not a blank line; false at the end of the file.</summary>
    public bool Read()
    {
        SkipBlankLines();
        if (!Have(0))
            return false;
        Line = _nextLine;
        Count = _at = _innerLines = _quoteAt = _unescapedLength = 0;
        Fault = null;
        var ended = ScanField();
        while (ended == FieldEnd.Separator)
        {
            _at++;
            ended = ScanField();
        }

        if (ended is FieldEnd.LineEnd or FieldEnd.EndOfText)
            Finish(_at, ended == FieldEnd.LineEnd);
        else
            Recover(ended);
        return true;
    }

    private void SkipBlankLines()
    {
        _start += _consumed;
        _consumed = 0;
        while (Have(0) && (IsLineEnd(_buffer[_start]) || IsReturnOfLineEnd(0)))
        {
            // Looking ahead may move the buffer, so the length is asked for before the place is read.
            var length = IsReturnOfLineEnd(0) ? 2 : LineEndLength(0);
            _start += length;
            _nextLine++;
        }
    }

    private FieldEnd ScanField()
    {
        if (Count >= limits.Fields)
            return FieldEnd.TooManyFields;
        if (Have(_at) && _buffer[_start + _at] == _quote)
            return ScanQuoted();
        var from = _at;
        while (true)
        {
            var hit = _buffer.AsSpan(_start + _at, _end - _start - _at).IndexOfAny(Separator, _lineEnd, _otherLineEnd);
            if (hit >= 0)
            {
                _at += hit;
                Add(from, _at - from - ReturnsBefore(_at, from), escaped: false);
                return _at > limits.Characters ? FieldEnd.TooLong : _buffer[_start + _at] == Separator ? FieldEnd.Separator : FieldEnd.LineEnd;
            }

            _at = _end - _start;
            if (_at > limits.Characters)
                return FieldEnd.TooLong;
            if (More())
                continue;
            Add(from, _at - from, escaped: false);
            return FieldEnd.EndOfText;
        }
    }

    private FieldEnd ScanQuoted()
    {
        _quoteAt = _at++;
        var from = _at;
        var escaped = false;
        while (true)
        {
            if (!Have(_at))
                return FieldEnd.Unclosed;
            var hit = _buffer.AsSpan(_start + _at, _end - _start - _at).IndexOfAny((char)_quote, _lineEnd, _otherLineEnd);
            _at = hit < 0 ? _end - _start : _at + hit;
            if (_at > limits.Characters)
                return FieldEnd.TooLong;
            if (hit < 0)
                continue;
            if (_buffer[_start + _at] != _quote)
            {
                _at += LineEndLength(_at);
                if (++_innerLines > limits.Lines)
                    return FieldEnd.TooManyLines;
            }
            else if (Have(_at + 1) && _buffer[_start + _at + 1] == _quote)
            {
                escaped = true;
                _at += 2;
            }
            else
            {
                Add(from, _at - from, escaped);
                _at++;
                return AfterQuote();
            }
        }
    }

    private FieldEnd AfterQuote()
    {
        if (!Have(_at))
            return FieldEnd.EndOfText;
        if (IsReturnOfLineEnd(_at))
            _at++;
        var next = _buffer[_start + _at];
        return next == Separator ? FieldEnd.Separator : IsLineEnd(next) ? FieldEnd.LineEnd : FieldEnd.TextAfterQuote;
    }

    /// <summary>Gives up the row: keeps its first line (or, if that is too long, its beginning) and goes on at the line after it.</summary>
    private void Recover(FieldEnd why)
    {
        var inQuotes = why is FieldEnd.Unclosed or FieldEnd.TextAfterQuote or FieldEnd.TooManyLines || (why == FieldEnd.TooLong && _innerLines > 0);
        Fault = Describe(why, inQuotes, Line + LineEndsBefore(_quoteAt));
        _innerLines = inQuotes ? LineEndsBefore(_quoteAt) : 0;
        _at = inQuotes ? _quoteAt : 0;
        Count = 0;
        while (true)
        {
            var hit = _buffer.AsSpan(_start + _at, _end - _start - _at).IndexOfAny(_lineEnd, _otherLineEnd);
            if (hit >= 0)
            {
                Finish(_at + hit, lineEnd: true);
                break;
            }

            _at = _end - _start;
            if (_at > limits.Characters)
            {
                SkipRestOfLine();
                break;
            }

            if (!More())
            {
                Finish(_at, lineEnd: false);
                break;
            }
        }
    }

    private string Describe(FieldEnd why, bool inQuotes, long quoteLine) => why switch
    {
        FieldEnd.TooLong when inQuotes => $"A quotation mark opens on line {quoteLine} and is not closed within {limits.Characters} characters. Close it, or double it if it belongs to the text.",
        FieldEnd.Unclosed => $"A quotation mark opens on line {quoteLine} and is never closed. Close it, or double it if it belongs to the text.",
        FieldEnd.TooManyLines => $"A quotation mark opens on line {quoteLine} and is not closed within {limits.Lines} lines. Close it, or double it if it belongs to the text.",
        FieldEnd.TextAfterQuote => $"Text follows the closing quotation mark of a field that opens on line {quoteLine}. Put the whole field in quotation marks and double those inside it.",
        FieldEnd.TooManyFields => $"The row has more than {limits.Fields} fields.",
        _ => $"The row is longer than {limits.Characters} characters; of it the first {limits.KeptCharacters} are kept here. Is a line end or a quotation mark missing?",
    };

    private int LineEndsBefore(int offset)
    {
        var text = _buffer.AsSpan(_start, offset);
        var count = 0;
        for (var i = text.IndexOfAny(_lineEnd, _otherLineEnd); i >= 0; i = text.IndexOfAny(_lineEnd, _otherLineEnd))
        {
            count++;
            text = text[(i + (text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n' ? 2 : 1))..];
        }

        return count;
    }

    /// <summary>Drops what is left of a line too long to keep, save its beginning.</summary>
    private void SkipRestOfLine()
    {
        _rawLength = limits.KeptCharacters;
        while (true)
        {
            _end = _start + _rawLength;
            _at = _rawLength;
            if (!More())
                break;
            var hit = _buffer.AsSpan(_start + _at, _end - _start - _at).IndexOfAny(_lineEnd, _otherLineEnd);
            if (hit < 0)
                continue;
            _at += hit;
            _consumed = _at + LineEndLength(_at);
            _nextLine = Line + _innerLines + 1;
            return;
        }

        _consumed = _end - _start;
    }

    private void Finish(int length, bool lineEnd)
    {
        _rawLength = length;
        _consumed = lineEnd ? length + LineEndLength(length) : length;
        _nextLine = Line + _innerLines + 1;
    }

    private bool IsLineEnd(char c) => c == _lineEnd || c == _otherLineEnd;

    private bool IsReturnOfLineEnd(int offset) =>
        _returnsBelongToLineEnds && _buffer[_start + offset] == '\r' && Have(offset + 1) && _buffer[_start + offset + 1] == '\n';

    /// <summary>1 where the field that ends at a line end has a carriage return that belongs to it, else 0.</summary>
    private int ReturnsBefore(int offset, int from) =>
        _returnsBelongToLineEnds && offset > from && _buffer[_start + offset] == '\n' && _buffer[_start + offset - 1] == '\r' ? 1 : 0;

    private int LineEndLength(int offset) => _buffer[_start + offset] == '\r' && Have(offset + 1) && _buffer[_start + offset + 1] == '\n' ? 2 : 1;

    private bool Have(int offset) => _start + offset < _end || More();

    /// <summary>Brings more text behind what is there; false at the end of the file.</summary>
    private bool More()
    {
        if (_sourceEnded)
            return false;
        if (_start > 0)
        {
            _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
            _end -= _start;
            _start = 0;
        }

        if (_end == _buffer.Length)
            Array.Resize(ref _buffer, _buffer.Length * 2);
        var read = source.Read(_buffer.AsSpan(_end));
        _sourceEnded = read == 0;
        _end += read;
        return read > 0;
    }

    private void Add(int from, int length, bool escaped)
    {
        if (Count == _fields.Length)
            Array.Resize(ref _fields, _fields.Length * 2);
        _fields[Count++] = new(from, length, escaped);
    }

    private ReadOnlySpan<char> Unescape(ReadOnlySpan<char> text)
    {
        if (_unescapedLength + text.Length > _unescaped.Length)
        {
            // A fresh block, so that spans handed out for earlier fields of the row stay whole.
            _unescaped = new char[Math.Max(text.Length, _unescaped.Length) * 2];
            _unescapedLength = 0;
        }

        var target = _unescaped.AsSpan(_unescapedLength);
        var length = 0;
        for (var i = 0; i < text.Length; i++)
        {
            target[length++] = text[i];
            if (text[i] == _quote)
                i++;
        }

        _unescapedLength += length;
        return target[..length];
    }
}
