using System.Buffers.Binary;
using System.Text;

namespace RangeMap.Records;

/// <summary>What the rows of an extension tell, packed as UTF-8 in large blocks: millions of them take a few bytes each beside their texts.</summary>
internal sealed class PackedCells
{
    private const int BlockBits = 20, BlockBytes = 1 << BlockBits;

    /// <summary>The number of rows, and a length for each of the four texts.</summary>
    private const int FixedBytes = 1 + 4 * sizeof(ushort);

    /// <summary>The longest text that is packed, in characters: its length in UTF-8 must fit 16 bits.</summary>
    public const int LongestText = ushort.MaxValue / 3;

    private readonly List<byte[]> _blocks = [];
    private int _at = BlockBytes;

    /// <summary>Bytes packed so far.</summary>
    public long Bytes { get; private set; }

    /// <summary>Packs what is told.</summary>
    /// <param name="cells">The texts, each no longer than <see cref="LongestText"/>.</param>
    /// <param name="rows">How many rows tell it, up to 255.</param>
    /// <returns>Where it is, for <see cref="Read"/>.</returns>
    public int Add(in ExtensionCells cells, int rows)
    {
        var most = FixedBytes + Encoding.UTF8.GetMaxByteCount(cells.Characters);
        if (_at + most > BlockBytes)
        {
            _blocks.Add(new byte[BlockBytes]);
            _at = 0;
        }

        var position = ((_blocks.Count - 1) << BlockBits) | _at;
        var to = _blocks[^1].AsSpan(_at);
        to[0] = (byte)rows;
        var length = 1;
        foreach (var text in (ReadOnlySpan<string?>)[cells.Length, cells.Evidence, cells.Link, cells.Complete])
            length += Write(to[length..], text);
        _at += length;
        Bytes += length;
        return position;
    }

    /// <summary>What was packed.</summary>
    public (ExtensionCells Cells, int Rows) Read(int position)
    {
        ReadOnlySpan<byte> from = _blocks[position >> BlockBits].AsSpan(position & (BlockBytes - 1));
        var rows = from[0];
        from = from[1..];
        return (new(Next(ref from), Next(ref from), Next(ref from), Next(ref from)), rows);
    }

    private static int Write(Span<byte> to, string? text)
    {
        var length = text is null ? 0 : Encoding.UTF8.GetBytes(text, to[sizeof(ushort)..]);
        BinaryPrimitives.WriteUInt16LittleEndian(to, (ushort)length);
        return sizeof(ushort) + length;
    }

    /// <summary>The next text; none of them is empty, so that no bytes mean none.</summary>
    private static string? Next(ref ReadOnlySpan<byte> from)
    {
        var length = BinaryPrimitives.ReadUInt16LittleEndian(from);
        var text = length == 0 ? null : Encoding.UTF8.GetString(from.Slice(sizeof(ushort), length));
        from = from[(sizeof(ushort) + length)..];
        return text;
    }
}
