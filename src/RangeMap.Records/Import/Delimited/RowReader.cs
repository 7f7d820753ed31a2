namespace RangeMap.Records;

/// <summary>
/// Splits delimited text into rows and fields after RFC 4180, with any of LF, CRLF and CR as line end. A row whose
/// quoting is broken costs its first line only: reading goes on at the next line.
/// </summary>
/// <remarks>Offsets of fields count from the start of the row, so that the buffer may be moved while a row is read.</remarks>
/// <param name="source">The characters.</param>
/// <param name="limits">How much a row may hold.</param>
/// <param name="firstBuffer">Characters of the buffer until a longer row makes it grow; tests make it tiny.</param>
internal sealed class RowReader(CharSource source, RowLimits limits, int firstBuffer = 1 << 14)
{
    private char[] buffer = new char[firstBuffer];
    private int start;
    private int end;
    private int at;
    private int consumed;
    private int rawLength;
    private int innerLines;
    private int quoteAt;
    private bool sourceEnded;
    private FieldSpan[] fields = new FieldSpan[64];
    private char[] unescaped = new char[256];
    private int unescapedLength;
    private long nextLine = 1;

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
    public ReadOnlySpan<char> Raw => buffer.AsSpan(start, rawLength);

    /// <summary>A field without its quotes. The text is valid until the next row is read.</summary>
    public ReadOnlySpan<char> this[int index]
    {
        get
        {
            var field = fields[index];
            var text = buffer.AsSpan(start + field.Start, field.Length);
            return field.Escaped ? Unescape(text) : text;
        }
    }

    /// <summary>The first line that is not blank, without moving on; empty at the end of the file.</summary>
    public ReadOnlySpan<char> PeekLine()
    {
        SkipBlankLines();
        at = 0;
        while (true)
        {
            var hit = buffer.AsSpan(start + at, end - start - at).IndexOfAny('\n', '\r');
            if (hit >= 0)
                return buffer.AsSpan(start, at + hit);
            at = end - start;
            if (at > limits.Characters || !More())
                return buffer.AsSpan(start, at);
        }
    }

    /// <summary>Moves to the next row that is not a blank line; false at the end of the file.</summary>
    public bool Read()
    {
        SkipBlankLines();
        if (!Have(0))
            return false;
        Line = nextLine;
        Count = at = innerLines = quoteAt = unescapedLength = 0;
        Fault = null;
        var ended = ScanField();
        while (ended == FieldEnd.Separator)
        {
            at++;
            ended = ScanField();
        }

        if (ended is FieldEnd.LineEnd or FieldEnd.EndOfText)
            Finish(at, ended == FieldEnd.LineEnd);
        else
            Recover(ended);
        return true;
    }

    private void SkipBlankLines()
    {
        start += consumed;
        consumed = 0;
        while (Have(0) && buffer[start] is '\n' or '\r')
        {
            var length = LineEndLength(0);
            start += length;
            nextLine++;
        }
    }

    private FieldEnd ScanField()
    {
        if (Count >= limits.Fields)
            return FieldEnd.TooManyFields;
        if (Have(at) && buffer[start + at] == '"')
            return ScanQuoted();
        var from = at;
        while (true)
        {
            var hit = buffer.AsSpan(start + at, end - start - at).IndexOfAny(Separator, '\n', '\r');
            if (hit >= 0)
            {
                at += hit;
                Add(from, at - from, escaped: false);
                return at > limits.Characters ? FieldEnd.TooLong : buffer[start + at] == Separator ? FieldEnd.Separator : FieldEnd.LineEnd;
            }

            at = end - start;
            if (at > limits.Characters)
                return FieldEnd.TooLong;
            if (More())
                continue;
            Add(from, at - from, escaped: false);
            return FieldEnd.EndOfText;
        }
    }

    private FieldEnd ScanQuoted()
    {
        quoteAt = at++;
        var from = at;
        var escaped = false;
        while (true)
        {
            if (!Have(at))
                return FieldEnd.Unclosed;
            var hit = buffer.AsSpan(start + at, end - start - at).IndexOfAny('"', '\n', '\r');
            at = hit < 0 ? end - start : at + hit;
            if (at > limits.Characters)
                return FieldEnd.TooLong;
            if (hit < 0)
                continue;
            if (buffer[start + at] != '"')
            {
                at += LineEndLength(at);
                if (++innerLines > limits.Lines)
                    return FieldEnd.TooManyLines;
            }
            else if (Have(at + 1) && buffer[start + at + 1] == '"')
            {
                escaped = true;
                at += 2;
            }
            else
            {
                Add(from, at - from, escaped);
                at++;
                return AfterQuote();
            }
        }
    }

    private FieldEnd AfterQuote()
    {
        if (!Have(at))
            return FieldEnd.EndOfText;
        var next = buffer[start + at];
        return next == Separator ? FieldEnd.Separator : next is '\n' or '\r' ? FieldEnd.LineEnd : FieldEnd.TextAfterQuote;
    }

    /// <summary>Gives up the row: keeps its first line (or, if that is too long, its beginning) and goes on at the line after it.</summary>
    private void Recover(FieldEnd why)
    {
        var inQuotes = why is FieldEnd.Unclosed or FieldEnd.TextAfterQuote or FieldEnd.TooManyLines || (why == FieldEnd.TooLong && innerLines > 0);
        Fault = Describe(why, inQuotes, Line + LineEndsBefore(quoteAt));
        innerLines = inQuotes ? LineEndsBefore(quoteAt) : 0;
        at = inQuotes ? quoteAt : 0;
        Count = 0;
        while (true)
        {
            var hit = buffer.AsSpan(start + at, end - start - at).IndexOfAny('\n', '\r');
            if (hit >= 0)
            {
                Finish(at + hit, lineEnd: true);
                break;
            }

            at = end - start;
            if (at > limits.Characters)
            {
                SkipRestOfLine();
                break;
            }

            if (!More())
            {
                Finish(at, lineEnd: false);
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
        var text = buffer.AsSpan(start, offset);
        var count = 0;
        for (var i = text.IndexOfAny('\n', '\r'); i >= 0; i = text.IndexOfAny('\n', '\r'))
        {
            count++;
            text = text[(i + (text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n' ? 2 : 1))..];
        }

        return count;
    }

    /// <summary>Drops what is left of a line too long to keep, save its beginning.</summary>
    private void SkipRestOfLine()
    {
        rawLength = limits.KeptCharacters;
        while (true)
        {
            end = start + rawLength;
            at = rawLength;
            if (!More())
                break;
            var hit = buffer.AsSpan(start + at, end - start - at).IndexOfAny('\n', '\r');
            if (hit < 0)
                continue;
            at += hit;
            consumed = at + LineEndLength(at);
            nextLine = Line + innerLines + 1;
            return;
        }

        consumed = end - start;
    }

    private void Finish(int length, bool lineEnd)
    {
        rawLength = length;
        consumed = lineEnd ? length + LineEndLength(length) : length;
        nextLine = Line + innerLines + 1;
    }

    private int LineEndLength(int offset) => buffer[start + offset] == '\r' && Have(offset + 1) && buffer[start + offset + 1] == '\n' ? 2 : 1;

    private bool Have(int offset) => start + offset < end || More();

    /// <summary>Brings more text behind what is there; false at the end of the file.</summary>
    private bool More()
    {
        if (sourceEnded)
            return false;
        if (start > 0)
        {
            buffer.AsSpan(start, end - start).CopyTo(buffer);
            end -= start;
            start = 0;
        }

        if (end == buffer.Length)
            Array.Resize(ref buffer, buffer.Length * 2);
        var read = source.Read(buffer.AsSpan(end));
        sourceEnded = read == 0;
        end += read;
        return read > 0;
    }

    private void Add(int from, int length, bool escaped)
    {
        if (Count == fields.Length)
            Array.Resize(ref fields, fields.Length * 2);
        fields[Count++] = new(from, length, escaped);
    }

    private ReadOnlySpan<char> Unescape(ReadOnlySpan<char> text)
    {
        if (unescapedLength + text.Length > unescaped.Length)
        {
            // A fresh block, so that spans handed out for earlier fields of the row stay whole.
            unescaped = new char[Math.Max(text.Length, unescaped.Length) * 2];
            unescapedLength = 0;
        }

        var target = unescaped.AsSpan(unescapedLength);
        var length = 0;
        for (var i = 0; i < text.Length; i++)
        {
            target[length++] = text[i];
            if (text[i] == '"')
                i++;
        }

        unescapedLength += length;
        return target[..length];
    }
}
