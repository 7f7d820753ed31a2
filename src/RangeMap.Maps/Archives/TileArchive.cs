using System.Buffers.Binary;
using System.IO.Compression;
using System.Security.Cryptography;

namespace RangeMap.Maps;

/// <summary>What an archive says of itself.</summary>
/// <param name="Metadata">JSON object, UTF-8.</param>
/// <param name="MinZoom">Coarsest level.</param>
/// <param name="MaxZoom">Finest level.</param>
/// <param name="Box">Box round the data.</param>
public sealed record TileArchiveHead(byte[] Metadata, int MinZoom, int MaxZoom, DegreeBox Box);

/// <summary>
/// Vector tiles in one file that any static host can serve by ranges: PMTiles, version 3. Tiles come in ascending order of their numbers, equal
/// tiles are kept once, and everything is compressed with gzip. Memory holds the directory and what tells tiles apart, no tiles.
/// </summary>
public sealed class TileArchive : IDisposable
{
    private const int HeaderBytes = 127, CopyBytes = 1 << 20;
    private const byte Gzip = 2, VectorTiles = 1;

    private readonly FileStream _tiles;
    private readonly List<TileEntry> _entries = [];
    private readonly Dictionary<UInt128, (ulong Offset, uint Length)> _contents = [];
    private ulong _addressed;

    /// <summary>Starts an archive.</summary>
    /// <param name="scratch">A file for the tiles until the archive is finished; it is made, and removed at the end.</param>
    public TileArchive(string scratch) => _tiles = new(scratch, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, CopyBytes, FileOptions.DeleteOnClose);

    /// <summary>Tiles added.</summary>
    public long Tiles => (long)_addressed;

    /// <summary>Adds a tile; one without bytes is left out, as every reader takes it for empty.</summary>
    /// <exception cref="ArgumentException">Its number does not follow those before.</exception>
    public void Add(ulong id, ReadOnlySpan<byte> tile)
    {
        if (tile.IsEmpty)
            return;
        var last = _entries.Count == 0 ? default(TileEntry?) : _entries[^1];
        if (last is { } before && id < before.Id + before.Run)
            throw new ArgumentException($"Tile {id} comes after tile {before.Id + before.Run - 1}.", nameof(id));
        _addressed++;
        var (offset, length) = Keep(tile);
        if (last is { } same && same.Offset == offset && same.Id + same.Run == id)
            _entries[^1] = same with { Run = same.Run + 1 };
        else
            _entries.Add(new(id, offset, length, 1));
    }

    /// <summary>Writes the whole archive to a stream.</summary>
    public async Task FinishAsync(Stream output, TileArchiveHead head, CancellationToken cancel = default)
    {
        if (_entries.Count == 0)
            throw new InvalidOperationException("An archive without tiles cannot be written: its directory must have an entry.");
        var (root, leaves) = TileDirectory.Pack(_entries);
        var metadata = Zip(head.Metadata);
        await output.WriteAsync(Header(head, root.Length, metadata.Length, leaves.Length), cancel).ConfigureAwait(false);
        foreach (var part in (byte[][])[root, metadata, leaves])
            await output.WriteAsync(part, cancel).ConfigureAwait(false);
        _tiles.Position = 0;
        await _tiles.CopyToAsync(output, CopyBytes, cancel).ConfigureAwait(false);
    }

    /// <inheritdoc/>
    public void Dispose() => _tiles.Dispose();

    private (ulong Offset, uint Length) Keep(ReadOnlySpan<byte> tile)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(tile, hash);
        var key = BinaryPrimitives.ReadUInt128LittleEndian(hash);
        if (_contents.TryGetValue(key, out var kept))
            return kept;
        var offset = _tiles.Position;
        ZipTo(_tiles, tile);
        return _contents[key] = ((ulong)offset, (uint)(_tiles.Position - offset));
    }

    private static byte[] Zip(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        ZipTo(packed, bytes);
        return packed.ToArray();
    }

    private static void ZipTo(Stream packed, ReadOnlySpan<byte> bytes)
    {
        using var zip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true);
        zip.Write(bytes);
    }

    private byte[] Header(TileArchiveHead head, int root, int metadata, int leaves)
    {
        var bytes = new byte[HeaderBytes];
        "PMTiles"u8.CopyTo(bytes);
        bytes[7] = 3;
        var at = (ulong)HeaderBytes;
        ulong[] numbers =
        [
            at, (ulong)root, at += (ulong)root, (ulong)metadata, at += (ulong)metadata, (ulong)leaves, at + (ulong)leaves, (ulong)_tiles.Length,
            _addressed, (ulong)_entries.Count, (ulong)_contents.Count,
        ];
        for (var i = 0; i < numbers.Length; i++)
            BinaryPrimitives.WriteUInt64LittleEndian(bytes.AsSpan(8 + i * 8), numbers[i]);
        (bytes[96], bytes[97], bytes[98], bytes[99]) = (1, Gzip, Gzip, VectorTiles);
        (bytes[100], bytes[101], bytes[118]) = ((byte)head.MinZoom, (byte)head.MaxZoom, (byte)head.MinZoom);
        var box = head.Box;
        double[] degrees = [box.West, box.South, box.East, box.North];
        for (var i = 0; i < degrees.Length; i++)
            WriteDegrees(bytes.AsSpan(102 + i * 4), degrees[i]);
        WriteDegrees(bytes.AsSpan(119), (box.West + box.East) / 2);
        WriteDegrees(bytes.AsSpan(123), (box.South + box.North) / 2);
        return bytes;
    }

    private static void WriteDegrees(Span<byte> to, double degrees) => BinaryPrimitives.WriteInt32LittleEndian(to, (int)Math.Round(degrees * 1e7));
}
