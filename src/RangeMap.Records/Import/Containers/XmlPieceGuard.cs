using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>Refuses XML with a tag or text so long that reading it would fill the memory.</summary>
internal sealed class XmlPieceGuard(Stream inner, string name, long longest) : ReadOnlyStream
{
    private long _length;

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        var count = inner.Read(buffer);
        var last = buffer[..count].LastIndexOfAny((byte)'<', (byte)'>');
        _length = last < 0 ? _length + count : count - last;
        return _length <= longest
            ? count
            : throw ContainerProblem.Of(Invariant($"{name} holds a single text or tag of more than {longest:N0} bytes."), name, "Cut the long text down, or save the table as CSV.");
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
            inner.Dispose();
        base.Dispose(disposing);
    }
}
