namespace RangeMap.Records;

/// <summary>A stream whose first bytes were already read and come again. Closing it closes the rest.</summary>
internal sealed class ReplayedStream(ReadOnlyMemory<byte> first, Stream rest) : ReadOnlyStream
{
    private int _at;

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        if (_at == first.Length)
            return rest.Read(buffer);
        var count = Math.Min(buffer.Length, first.Length - _at);
        first.Span.Slice(_at, count).CopyTo(buffer);
        _at += count;
        return count;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
            rest.Dispose();
        base.Dispose(disposing);
    }
}
