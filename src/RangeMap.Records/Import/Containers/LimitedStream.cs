using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>What a packed entry says of itself, to be held against what it unpacks to.</summary>
/// <param name="Name">Its name, for messages.</param>
/// <param name="PackedBytes">Its packed size; null if not known.</param>
/// <param name="Bytes">Its size; null if not known.</param>
/// <param name="Crc">Checksum of its content (CRC-32); null if not known.</param>
internal sealed record PackedEntry(string Name, long? PackedBytes = null, long? Bytes = null, uint? Crc = null);

/// <summary>Unpacks no more than the limits allow, and notices at the end whether all came out whole.</summary>
internal sealed class LimitedStream(Stream inner, PackedEntry entry, FileLimits limits, long? mostBytes = null) : ReadOnlyStream
{
    private readonly System.IO.Hashing.Crc32 _crc = new();
    private readonly long _most = Math.Min(mostBytes ?? limits.UnpackedBytes, limits.UnpackedBytes);
    private long _read;
    private bool _checked;

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        if (buffer.IsEmpty)
            return 0;
        var count = ReadInner(buffer);
        _read += count;
        if (count == 0)
            CheckWhole();
        else if (entry.Crc is not null)
            _crc.Append(buffer[..count]);
        if (_read > _most)
            throw ContainerProblem.TooLarge(entry.Name, _most);
        if (entry.PackedBytes is { } packed && _read > limits.UnpackedBytesBeforeRatio && _read / limits.UnpackedRatio > packed)
            throw ContainerProblem.TooDense(entry.Name, limits.UnpackedRatio);
        return count;
    }

    private int ReadInner(Span<byte> buffer)
    {
        try
        {
            return inner.Read(buffer);
        }
        catch (Exception e) when (e is InvalidDataException or EndOfStreamException or NotSupportedException)
        {
            throw ContainerProblem.Damaged(entry.Name, Invariant($"It cannot be unpacked after byte {_read:N0}."));
        }
    }

    private void CheckWhole()
    {
        if (_checked)
            return;
        _checked = true;
        if (entry.Bytes is { } bytes && bytes != _read)
            throw ContainerProblem.Damaged(entry.Name, Invariant($"It should hold {bytes:N0} bytes and holds {_read:N0}."));
        if (entry.Crc is { } crc && crc != _crc.GetCurrentHashAsUInt32())
            throw ContainerProblem.Damaged(entry.Name, "Its checksum does not fit its content.");
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
            inner.Dispose();
        base.Dispose(disposing);
    }
}
