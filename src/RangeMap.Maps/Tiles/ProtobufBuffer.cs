using System.Buffers;
using System.Runtime.CompilerServices;

namespace RangeMap.Maps;

/// <summary>Growing bytes from the shared pool, with the few protobuf forms that a vector tile needs.</summary>
internal sealed class ProtobufBuffer(int capacity) : IDisposable
{
    private const int LongestVarint = 10;

    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(capacity);

    public int Length { get; private set; }

    public ReadOnlySpan<byte> Written => _bytes.AsSpan(0, Length);

    public void Clear() => Length = 0;

    /// <summary>Seven bits a byte, lowest first; the high bit says that more follow.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Varint(ulong value)
    {
        if (_bytes.Length - Length < LongestVarint)
            Grow(LongestVarint);
        var (bytes, at) = (_bytes, Length);
        while (value >= 0x80)
        {
            bytes[at++] = (byte)(value | 0x80);
            value >>= 7;
        }

        bytes[at++] = (byte)value;
        Length = at;
    }

    /// <summary>A signed number with its sign in the lowest bit, so that small ones of either sign stay short.</summary>
    public void Zigzag(int value) => Varint((uint)((value << 1) ^ (value >> 31)));

    /// <summary>A field that holds a number.</summary>
    public void NumberField(int field, ulong value)
    {
        Varint((uint)(field << 3));
        Varint(value);
    }

    /// <summary>A field that holds a fraction.</summary>
    public void FractionField(int field, double value)
    {
        Varint((uint)((field << 3) | 1));
        Span<byte> bytes = stackalloc byte[sizeof(double)];
        System.Buffers.Binary.BinaryPrimitives.WriteDoubleLittleEndian(bytes, value);
        Raw(bytes);
    }

    /// <summary>A field that holds bytes: text, a packed list or a message.</summary>
    public void BytesField(int field, ReadOnlySpan<byte> bytes)
    {
        BytesFieldStart(field, bytes.Length);
        Raw(bytes);
    }

    /// <summary>The start of a field whose bytes the caller writes next.</summary>
    public void BytesFieldStart(int field, int length)
    {
        Varint((uint)((field << 3) | 2));
        Varint((uint)length);
    }

    public void Raw(ReadOnlySpan<byte> bytes)
    {
        if (_bytes.Length - Length < bytes.Length)
            Grow(bytes.Length);
        bytes.CopyTo(_bytes.AsSpan(Length));
        Length += bytes.Length;
    }

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
        Length = 0;
    }

    private void Grow(int more)
    {
        var larger = ArrayPool<byte>.Shared.Rent(Math.Max(_bytes.Length * 2, Length + more));
        Written.CopyTo(larger);
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = larger;
    }
}
