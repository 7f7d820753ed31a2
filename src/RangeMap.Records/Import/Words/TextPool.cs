using System.IO.Hashing;
using System.Runtime.InteropServices;

namespace RangeMap.Records;

/// <summary>
/// Gives one string for equal texts that come again and again, such as names of recorders and sites. A fixed number of
/// slots; a text that misses its slot is made anew and takes it.
/// </summary>
internal sealed class TextPool
{
    private const int Slots = 1 << 14;
    private const int LongestPooled = 200;
    private readonly string?[] _slots = new string?[Slots];

    /// <summary>A string of the text, or null for an empty one.</summary>
    public string? Get(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
            return null;
        if (text.Length > LongestPooled)
            return text.ToString();
        ref var slot = ref _slots[XxHash3.HashToUInt64(MemoryMarshal.AsBytes(text)) & (Slots - 1)];
        return slot is not null && text.SequenceEqual(slot) ? slot : slot = text.ToString();
    }
}
