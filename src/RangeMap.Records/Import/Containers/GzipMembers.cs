using System.Buffers.Binary;
using System.IO.Compression;
using System.IO.Hashing;
using static System.FormattableString;

namespace RangeMap.Records;

/// <summary>
/// Unpacks gzip (RFC 1952), any number of members one after another, and refuses a file that was cut short or damaged. The
/// framework's own reader takes a cut file for a whole one, so rows at its end would be lost without a word.
/// </summary>
/// <remarks>
/// Where the packed data of a member ends cannot be asked. It ends in the last piece handed to the unpacker, and there the
/// trailer is looked for: the checksum and the length of what came out, 64 bits that hardly stand there by chance.
/// </remarks>
internal sealed class GzipMembers : ReadOnlyStream
{
    private const int TrailerBytes = 8;
    private readonly GzipFeed _feed;
    private readonly string _name;
    private readonly Crc32 _crc = new();
    private DeflateStream? _member;
    private uint _length;
    private long _total;

    /// <param name="packed">Read from where it stands; not closed.</param>
    /// <param name="name">The file's name, for messages.</param>
    public GzipMembers(Stream packed, string name)
    {
        _feed = new(packed);
        _name = name;
        if (!_feed.SkipHeader())
            throw Cut();
        Begin();
    }

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        while (_member is not null && !buffer.IsEmpty)
        {
            var count = ReadMember(buffer);
            if (count > 0)
            {
                _crc.Append(buffer[..count]);
                _length += (uint)count;
                _total += count;
                return count;
            }

            EndMember();
        }

        return 0;
    }

    private int ReadMember(Span<byte> buffer)
    {
        try
        {
            return _member!.Read(buffer);
        }
        catch (InvalidDataException)
        {
            throw ContainerProblem.Damaged(_name, Invariant($"It cannot be unpacked after byte {_total:N0}."));
        }
    }

    private void Begin()
    {
        _member = new DeflateStream(_feed, CompressionMode.Decompress, leaveOpen: true);
        _length = 0;
        _crc.Reset();
    }

    /// <summary>Checks the member that came to its end and begins the next one, if there is one.</summary>
    private void EndMember()
    {
        _member!.Dispose();
        _member = null;
        if (_feed.WasAskedBeyondEnd)
            throw Cut();
        Span<byte> trailer = stackalloc byte[TrailerBytes];
        BinaryPrimitives.WriteUInt32LittleEndian(trailer, _crc.GetCurrentHashAsUInt32());
        BinaryPrimitives.WriteUInt32LittleEndian(trailer[4..], _length);
        if (!_feed.SkipPast(trailer))
            throw ContainerProblem.Damaged(_name, Invariant($"The checksum after byte {_total:N0} does not fit or is missing."));
        if (_feed.RestIsZeros())
            return;
        if (!_feed.SkipHeader())
            throw ContainerProblem.Damaged(_name, Invariant($"What follows byte {_total:N0} is not gzip."));
        Begin();
    }

    private ImportProblemException Cut() => ContainerProblem.Damaged(_name, Invariant($"It is cut short after byte {_total:N0} of its content."));

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
            _member?.Dispose();
        base.Dispose(disposing);
    }
}
