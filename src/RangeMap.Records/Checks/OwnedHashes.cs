using System.Runtime.InteropServices;

namespace RangeMap.Records;

/// <summary>
/// A map from 64-bit hashes to the first value that each was seen with, in one array with at most four fifths of its slots in
/// use: 15 to 23 bytes an entry for a value of 4 bytes, 20 to 30 for one of 8.
/// </summary>
internal sealed class OwnedHashes<T>
    where T : unmanaged
{
    private Slot[] _slots = new Slot[1 << 10];
    private int _count;

    /// <summary>Adds a hash with its value; true when it was there, with the value that it was seen with first.</summary>
    public bool TryGetOrAdd(ulong hash, T value, out T first)
    {
        // 0 marks an empty slot.
        hash = hash == 0 ? 1 : hash;
        if (!Place(_slots, hash, value, out first))
            return true;
        if (++_count > _slots.Length / 5 * 4)
            Grow();
        return false;
    }

    private static bool Place(Slot[] slots, ulong hash, T value, out T first)
    {
        // The high half of the product spreads hashes evenly over any number of slots.
        for (var i = (int)Math.BigMul(hash, (ulong)slots.Length, out _); ; i = i + 1 == slots.Length ? 0 : i + 1)
        {
            ref var slot = ref slots[i];
            if (slot.Hash == hash)
            {
                first = slot.Value;
                return false;
            }

            if (slot.Hash != 0)
                continue;
            slot = new() { Hash = hash, Value = value };
            first = value;
            return true;
        }
    }

    private void Grow()
    {
        var larger = new Slot[_slots.Length / 2 * 3];
        foreach (var slot in _slots)
        {
            if (slot.Hash != 0)
                Place(larger, slot.Hash, slot.Value, out _);
        }

        _slots = larger;
    }

    [StructLayout(LayoutKind.Sequential, Pack = 4)]
    private struct Slot
    {
        public ulong Hash;
        public T Value;
    }
}
