namespace RangeMap.Records;

/// <summary>Hands packed bytes to an unpacker and remembers the last piece, in which the packed data may have ended.</summary>
internal sealed class GzipFeed(Stream packed) : ReadOnlyStream
{
    private const int PieceBytes = 1 << 14;
    private const byte HasHeaderChecksum = 2, HasExtra = 4, HasName = 8, HasComment = 16, Reserved = 0xE0;
    private readonly byte[] _piece = new byte[PieceBytes];
    private int _at;
    private int _end;
    private int _handedFrom;

    /// <summary>True once more was wanted than there is.</summary>
    public bool WasAskedBeyondEnd { get; private set; }

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        if (!Have(1))
        {
            WasAskedBeyondEnd = true;
            return 0;
        }

        var count = Math.Min(buffer.Length, _end - _at);
        _piece.AsSpan(_at, count).CopyTo(buffer);
        _handedFrom = _at;
        _at += count;
        return count;
    }

    /// <summary>Skips the header of a member; false if there is none or it is cut.</summary>
    public bool SkipHeader()
    {
        if (!Have(10) || _piece[_at] != 0x1F || _piece[_at + 1] != 0x8B || _piece[_at + 2] != 8 || (_piece[_at + 3] & Reserved) != 0)
            return false;
        var flags = _piece[_at + 3];
        _at += 10;
        if ((flags & HasExtra) != 0 && !SkipExtra())
            return false;
        if ((flags & HasName) != 0 && !SkipText())
            return false;
        if ((flags & HasComment) != 0 && !SkipText())
            return false;
        return (flags & HasHeaderChecksum) == 0 || Skip(2);
    }

    /// <summary>Goes on after a trailer that begins in the piece last handed out; false if it is not there.</summary>
    public bool SkipPast(ReadOnlySpan<byte> trailer)
    {
        var places = _at - _handedFrom + 1;
        _at = _handedFrom;
        for (; places > 0 && Have(trailer.Length); places--)
        {
            if (_piece.AsSpan(_at, trailer.Length).SequenceEqual(trailer))
                return Skip(trailer.Length);
            _at++;
        }

        return false;
    }

    /// <summary>True when nothing follows but the zero bytes with which tapes were filled up.</summary>
    public bool RestIsZeros()
    {
        while (Have(1))
        {
            if (_piece[_at] != 0)
                return false;
            _at++;
        }

        return true;
    }

    private bool SkipExtra() => Have(2) && Skip(2 + _piece[_at] + (_piece[_at + 1] << 8));

    private bool SkipText()
    {
        while (Have(1))
        {
            if (_piece[_at++] == 0)
                return true;
        }

        return false;
    }

    private bool Skip(int count)
    {
        for (; count > 0; count--)
        {
            if (!Have(1))
                return false;
            _at++;
        }

        return true;
    }

    private bool Have(int count)
    {
        if (_end - _at >= count)
            return true;
        _piece.AsSpan(_at, _end - _at).CopyTo(_piece);
        _handedFrom = Math.Max(0, _handedFrom - _at);
        _end -= _at;
        _at = 0;
        _end += packed.ReadAtLeast(_piece.AsSpan(_end), count - _end, throwOnEndOfStream: false);
        return _end >= count;
    }
}
