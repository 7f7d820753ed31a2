using System.Collections.Concurrent;

namespace RangeMap.Server;

/// <summary>Tiles of one state by the address that they were asked at, letter for letter. Bounded: when full it forgets all at once, and they are found again by their question.</summary>
internal sealed class AddressedTiles
{
    private const int MostTiles = 16_384, LongestAddress = 512;

    private readonly ConcurrentDictionary<string, TileAnswer> _tiles = new(StringComparer.Ordinal);
    private int _kept;

    /// <summary>The tile of an address; null where it was not asked before.</summary>
    public TileAnswer? Find(string address) => _tiles.GetValueOrDefault(address);

    /// <summary>Keeps a tile that was asked for at an address.</summary>
    public void Keep(string address, TileAnswer tile)
    {
        if (address.Length > LongestAddress || !_tiles.TryAdd(address, tile))
            return;
        // The dictionary's own count would lock it as a whole.
        if (Interlocked.Increment(ref _kept) < MostTiles)
            return;
        Interlocked.Exchange(ref _kept, 0);
        _tiles.Clear();
    }
}
