namespace RangeMap.Presence;

/// <summary>Writes signed integers, small ones in one byte: zigzag, then seven bits a byte, the high bit meaning "more follows".</summary>
internal struct VarintWriter(int capacity)
{
    private byte[] _bytes = new byte[Math.Max(capacity, 64)];
    private int _length;

    public void Write(long value)
    {
        if (_length + 10 > _bytes.Length)
            Array.Resize(ref _bytes, _bytes.Length * 2);
        var rest = (ulong)((value << 1) ^ (value >> 63));
        while (rest >= 0x80)
        {
            _bytes[_length++] = (byte)(rest | 0x80);
            rest >>= 7;
        }

        _bytes[_length++] = (byte)rest;
    }

    public readonly byte[] ToArray() => _bytes.AsSpan(0, _length).ToArray();
}

/// <summary>Reads what <see cref="VarintWriter"/> wrote.</summary>
internal ref struct VarintReader(ReadOnlySpan<byte> bytes)
{
    private readonly ReadOnlySpan<byte> _bytes = bytes;
    private int _at;

    public readonly bool AtEnd => _at >= _bytes.Length;

    public long Read()
    {
        ulong value = 0;
        for (var shift = 0; shift < 64; shift += 7)
        {
            if (_at >= _bytes.Length)
                throw new InvalidDataException("The packed numbers end in the middle of one.");
            var next = _bytes[_at++];
            value |= (ulong)(next & 0x7F) << shift;
            if (next < 0x80)
                return (long)(value >> 1) ^ -(long)(value & 1);
        }

        throw new InvalidDataException("A packed number is longer than 64 bits.");
    }
}
