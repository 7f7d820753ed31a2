namespace RangeMap.Records;

/// <summary>
/// A map from hashes to the 16-bit tag that each was seen with first, both in one number: 11 to 17 bytes an entry.
/// </summary>
/// <remarks>
/// Of a hash 48 bits are kept: among 10 million hashes about one in five such maps takes one hash for another once.
/// </remarks>
/// <param name="expected">Entries to make room for at once; more still fit.</param>
internal sealed class TaggedHashes(long expected = 0)
{
    private const int TagBits = 16;
    private const ulong TagMask = (1UL << TagBits) - 1;

    private ulong[] _slots = WidePages.Array<ulong>(Math.Max(1 << 10, ExpectedRows.SlotsFor(expected)));
    private int _count;

    /// <summary>Tells of a hash that will be added soon.</summary>
    public void Expect(ulong hash) => Prefetch.Of(ref _slots[SlotOf(hash & ~TagMask, _slots.Length)]);

    /// <summary>Adds a hash with its tag; true when it was there, with the tag that it was seen with first.</summary>
    public bool TryGetOrAdd(ulong hash, ushort tag, out ushort first)
    {
        // 0 marks an empty slot.
        hash = Math.Max(hash & ~TagMask, TagMask + 1);
        first = tag;
        if (!Place(_slots, hash | tag, ref first))
            return true;
        if (++_count > _slots.Length / 10 * 7)
            Grow();
        return false;
    }

    private static bool Place(ulong[] slots, ulong entry, ref ushort first)
    {
        for (var i = SlotOf(entry & ~TagMask, slots.Length); ; i = i + 1 == slots.Length ? 0 : i + 1)
        {
            var slot = slots[i];
            if (slot == 0)
            {
                slots[i] = entry;
                return true;
            }

            if (((slot ^ entry) & ~TagMask) != 0)
                continue;
            first = (ushort)(slot & TagMask);
            return false;
        }
    }

    /// <summary>The high half of the product spreads hashes evenly over any number of slots.</summary>
    private static int SlotOf(ulong hash, int slots) => (int)Math.BigMul(hash, (ulong)slots, out _);

    private void Grow()
    {
        var larger = WidePages.Array<ulong>(_slots.Length / 2 * 3);
        ushort first = 0;
        foreach (var entry in _slots)
        {
            if (entry != 0)
                Place(larger, entry, ref first);
        }

        _slots = larger;
    }
}
