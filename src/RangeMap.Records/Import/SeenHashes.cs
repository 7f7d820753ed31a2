namespace RangeMap.Records;

/// <summary>A set of 64-bit hashes in 8 bytes a slot, at most seven tenths full: 10 million in 128 MB.</summary>
/// <param name="expected">Hashes to make room for at once, which spares memory that growing leaves behind; more still fit.</param>
internal sealed class SeenHashes(long expected = 0)
{
    private ulong[] _slots = WidePages.Array<ulong>(Math.Max(1 << 12, (int)System.Numerics.BitOperations.RoundUpToPowerOf2((ulong)ExpectedRows.SlotsFor(expected))));
    private int _count;
    private bool _hasZero;

    /// <summary>Tells of a hash that will be added soon.</summary>
    public void Expect(ulong hash) => Prefetch.Of(ref _slots[hash & ((ulong)_slots.Length - 1)]);

    /// <summary>Adds a hash; false if it was there.</summary>
    public bool Add(ulong hash)
    {
        if (hash == 0)
        {
            var isNew = !_hasZero;
            _hasZero = true;
            return isNew;
        }

        if (!Place(_slots, hash))
            return false;
        if (++_count > _slots.Length / 10 * 7)
            Grow();
        return true;
    }

    /// <summary>True if the hash was added.</summary>
    public bool Contains(ulong hash)
    {
        var mask = (ulong)_slots.Length - 1;
        for (var i = hash & mask; hash != 0 && _slots[i] != 0; i = (i + 1) & mask)
        {
            if (_slots[i] == hash)
                return true;
        }

        return hash == 0 && _hasZero;
    }

    private static bool Place(ulong[] slots, ulong hash)
    {
        var mask = (ulong)slots.Length - 1;
        for (var i = hash & mask; ; i = (i + 1) & mask)
        {
            if (slots[i] == hash)
                return false;
            if (slots[i] != 0)
                continue;
            slots[i] = hash;
            return true;
        }
    }

    private void Grow()
    {
        var larger = WidePages.Array<ulong>(_slots.Length * 2);
        foreach (var hash in _slots)
        {
            if (hash != 0)
                Place(larger, hash);
        }

        _slots = larger;
    }
}
