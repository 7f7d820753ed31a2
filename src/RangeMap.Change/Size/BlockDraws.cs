using System.Collections.Concurrent;

namespace RangeMap.Change;

/// <summary>
/// Draws with replacement of as many blocks as there are, for any number of blocks: how many times each draw holds each block. They hang on
/// the seed and the number of blocks alone, so thousands of taxa share them.
/// </summary>
internal sealed class BlockDraws(int draws, ulong seed)
{
    // Beyond this number of blocks draws are made anew each time: few taxa have so many, and keeping them would fill the memory.
    private const int MostKept = 512;

    private readonly ConcurrentDictionary<int, byte[]> _kept = [];

    /// <summary>Number of draws.</summary>
    public int Count { get; } = draws;

    /// <summary>Draw after draw, how many times it holds each block.</summary>
    public byte[] Of(int blocks) => blocks > MostKept ? Make(blocks) : _kept.GetOrAdd(blocks, Make);

    private byte[] Make(int blocks)
    {
        var times = new byte[(long)Count * blocks];
        for (var draw = 0; draw < Count; draw++)
        {
            // A stream to each draw: their number does not change those already made.
            var chance = new Pcg(seed, (ulong)draw);
            for (var i = 0; i < blocks; i++)
                times[draw * blocks + chance.NextIndex(blocks)]++;
        }

        return times;
    }
}
