namespace RangeMap.Records;

/// <summary>
/// A map from 64-bit hashes to the square code that each was seen with first, in one array with at most seven tenths of its slots
/// in use: 23 to 34 bytes an entry.
/// </summary>
internal sealed class FirstSquares
{
    private Slot[] _slots = new Slot[1 << 10];
    private int _count;

    /// <summary>The square of a hash that was there; else the given one, which is added.</summary>
    public long GetOrAdd(ulong hash, long square)
    {
        // 0 marks an empty slot.
        ref var slot = ref Find(_slots, hash == 0 ? 1 : hash);
        if (slot.Hash != 0)
            return slot.Square;
        slot = new(hash == 0 ? 1 : hash, square);
        if (++_count > _slots.Length / 10 * 7)
            Grow();
        return square;
    }

    private static ref Slot Find(Slot[] slots, ulong hash)
    {
        // The high half of the product spreads hashes evenly over any number of slots.
        var i = (int)Math.BigMul(hash, (ulong)slots.Length, out _);
        while (slots[i].Hash != 0 && slots[i].Hash != hash)
            i = i + 1 == slots.Length ? 0 : i + 1;
        return ref slots[i];
    }

    private void Grow()
    {
        var larger = WidePages.Array<Slot>(_slots.Length / 2 * 3);
        foreach (var slot in _slots)
        {
            if (slot.Hash != 0)
                Find(larger, slot.Hash) = slot;
        }

        _slots = larger;
    }

    private readonly record struct Slot(ulong Hash, long Square);
}
