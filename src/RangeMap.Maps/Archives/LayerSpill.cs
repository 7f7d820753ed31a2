namespace RangeMap.Maps;

/// <summary>
/// Layers of tiles in a file until all are drawn: they come map by map, and are wanted tile by tile. Memory holds where each layer lies (24 bytes), and one tile while it is put together.
/// </summary>
internal sealed class LayerSpill : IDisposable
{
    private const int BufferBytes = 1 << 20;

    private readonly FileStream _file;
    private readonly List<Piece> _pieces = [];

    /// <summary>Starts with a new file, which is removed at the end.</summary>
    public LayerSpill(string scratch) => _file = new(scratch, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, BufferBytes, FileOptions.DeleteOnClose);

    /// <summary>Adds a layer to a tile, after those that it has; an empty one is none.</summary>
    public void Add(ulong tile, ReadOnlySpan<byte> layer)
    {
        if (layer.IsEmpty)
            return;
        _pieces.Add(new(tile, _file.Position, layer.Length));
        _file.Write(layer);
    }

    /// <summary>The tiles in ascending order of their numbers; the bytes are good until the next is asked for.</summary>
    public IEnumerable<(ulong Id, ReadOnlyMemory<byte> Bytes)> Tiles()
    {
        _file.Flush();
        _pieces.Sort();
        var tile = new byte[BufferBytes];
        for (var from = 0; from < _pieces.Count;)
        {
            var (to, length) = (from, 0);
            for (; to < _pieces.Count && _pieces[to].Tile == _pieces[from].Tile; to++)
                length += _pieces[to].Length;
            if (length > tile.Length)
                tile = new byte[Math.Max(length, tile.Length * 2)];
            Read(from, to, tile);
            yield return (_pieces[from].Tile, tile.AsMemory(0, length));
            from = to;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();

    private void Read(int from, int to, byte[] tile)
    {
        var at = 0;
        foreach (var piece in _pieces[from..to])
        {
            for (var read = 0; read < piece.Length;)
            {
                var got = RandomAccess.Read(_file.SafeFileHandle, tile.AsSpan(at + read, piece.Length - read), piece.Offset + read);
                read += got > 0 ? got : throw new EndOfStreamException("A scratch file of tiles was cut off while it was in use.");
            }

            at += piece.Length;
        }
    }

    /// <summary>A layer of a tile: by tile, then in the order in which they came.</summary>
    private readonly record struct Piece(ulong Tile, long Offset, int Length) : IComparable<Piece>
    {
        public int CompareTo(Piece other) => (Tile, Offset).CompareTo((other.Tile, other.Offset));
    }
}
