namespace RangeMap.Records;

/// <summary>Builds rows as lines of CSV after RFC 4180, one after another in the same memory.</summary>
internal sealed class CsvLine
{
    private char[] _text = new char[256];
    private int _length;
    private bool _hasFields;

    /// <summary>The line so far, without a line end.</summary>
    public ReadOnlySpan<char> Text => _text.AsSpan(0, _length);

    /// <summary>Begins a new line.</summary>
    public void Clear()
    {
        _length = 0;
        _hasFields = false;
    }

    /// <summary>Adds a field, in quotation marks where it needs them.</summary>
    public void Add(ReadOnlySpan<char> field)
    {
        if (_hasFields)
            Append(",");
        _hasFields = true;
        if (field.IndexOfAny(",\"\r\n") < 0)
        {
            Append(field);
            return;
        }

        Append("\"");
        for (var quote = field.IndexOf('"'); quote >= 0; quote = field.IndexOf('"'))
        {
            Append(field[..(quote + 1)]);
            Append("\"");
            field = field[(quote + 1)..];
        }

        Append(field);
        Append("\"");
    }

    private void Append(ReadOnlySpan<char> text)
    {
        if (_length + text.Length > _text.Length)
            Array.Resize(ref _text, Math.Max(_text.Length * 2, _length + text.Length));
        text.CopyTo(_text.AsSpan(_length));
        _length += text.Length;
    }
}
