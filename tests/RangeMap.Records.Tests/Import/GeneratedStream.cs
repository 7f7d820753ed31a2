namespace RangeMap.Records.Tests;

/// <summary>A long stream that is never whole in memory: a beginning, one character many times, an end.</summary>
internal sealed class GeneratedStream(string beginning, char filling, long fillingLength, string ending) : Stream
{
    private long position;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => beginning.Length + fillingLength + ending.Length;

    public override long Position { get => position; set => throw new NotSupportedException(); }

    public override int Read(byte[] buffer, int offset, int count)
    {
        var read = (int)Math.Min(count, Length - position);
        if (position >= beginning.Length && position + read <= beginning.Length + fillingLength)
        {
            buffer.AsSpan(offset, read).Fill((byte)filling);
            position += read;
            return read;
        }

        for (var i = 0; i < read; i++, position++)
            buffer[offset + i] = (byte)At(position);
        return read;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    private char At(long index) =>
        index < beginning.Length ? beginning[(int)index]
        : index < beginning.Length + fillingLength ? filling
        : ending[(int)(index - beginning.Length - fillingLength)];
}
